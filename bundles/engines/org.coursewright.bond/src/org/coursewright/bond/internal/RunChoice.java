package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a proof tells apart in a run: one pattern, or all patterns with so many cuts beyond the least.
 *
 * @param pattern the pattern, or empty for all patterns with {@code extra} cuts beyond the least
 * @param extra cuts beyond the least; {@link #MOST_EXTRA} stands for so many or more
 */
record RunChoice(Optional<Pattern> pattern, int extra) {

    /** So many extra cuts are taken to suit every neighbour. */
    static final int MOST_EXTRA = 3;

    private static final int MOST_PATTERNS = 24;

    /** All choices of runs of one shape; patterns are told apart where those without extra cuts are few. */
    static List<RunChoice> of(PatternPool pool) {
        List<RunChoice> choices = new ArrayList<>();
        boolean few = true;
        for (int extra = 0; extra <= MOST_EXTRA; extra++) {
            Optional<List<Pattern>> all = few && extra < 1
                    ? pool.all(pool.leastCuts() + extra, MOST_PATTERNS)
                    : Optional.empty();
            few = all.isPresent();
            int level = extra;
            all.ifPresentOrElse(
                    patterns -> patterns.forEach(pattern -> choices.add(new RunChoice(Optional.of(pattern), level))),
                    () -> choices.add(new RunChoice(Optional.empty(), level)));
        }
        return choices;
    }
}
