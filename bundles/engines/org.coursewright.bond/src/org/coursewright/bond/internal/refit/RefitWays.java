package org.coursewright.bond.internal.refit;

import java.util.List;

import org.coursewright.bond.internal.run.Pattern;

/** Ways to fill a run. Equal only to itself, so that it is quickly told apart from others. */
final class RefitWays {

    private final Pattern[] patterns;
    private final long[] costs;
    private final RefitWays[] single;

    RefitWays(List<Pattern> patterns) {
        this.patterns = patterns.toArray(Pattern[]::new);
        costs = patterns.stream().mapToLong(Pattern::cost).toArray();
        single = new RefitWays[costs.length];
    }

    int count() {
        return costs.length;
    }

    Pattern pattern(int way) {
        return patterns[way];
    }

    /** The first of them, or the only one. */
    Pattern pattern() {
        return patterns[0];
    }

    /** One of them by itself, always the same object. */
    RefitWays only(int way) {
        if (costs.length == 1) {
            return this;
        }
        if (single[way] == null) {
            single[way] = new RefitWays(List.of(patterns[way]));
        }
        return single[way];
    }

    /** What each costs by itself. */
    long[] costs() {
        return costs.clone();
    }
}
