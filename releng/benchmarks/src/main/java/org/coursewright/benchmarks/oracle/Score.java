package org.coursewright.benchmarks.oracle;

import java.util.Comparator;

/**
 * What a layout is judged by, first things first: less is better.
 *
 * @param unfillable runs left empty
 * @param lapViolations pairs of joints that lap too little
 * @param cuts pieces that have to be cut
 */
public record Score(int unfillable, int lapViolations, int cuts) implements Comparable<Score> {

    /** Nothing unfilled, no lap short, no cut. */
    public static final Score NONE = new Score(0, 0, 0);

    private static final Comparator<Score> ORDER = Comparator.comparingInt(Score::unfillable)
            .thenComparingInt(Score::lapViolations).thenComparingInt(Score::cuts);

    /** @return the score of this and {@code other} together */
    public Score plus(Score other) {
        return new Score(unfillable + other.unfillable, lapViolations + other.lapViolations, cuts + other.cuts);
    }

    @Override
    public int compareTo(Score other) {
        return ORDER.compare(this, other);
    }
}
