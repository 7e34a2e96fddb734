package org.coursewright.bond.internal.lap;

import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;

/**
 * Counts joints of consecutive courses that lap too little. A joint [a, b] and a joint [p, q] lap {@code p - b} or
 * {@code a - q}, whichever is the greater; positions are fractions and compared exactly.
 */
public final class LapCheck {

    /** Rough positions are up to two too low each; where they decide nothing the exact fractions do. */
    private static final long ROUGHNESS = 2;

    private LapCheck() {
    }

    /**
     * Pairs of joints, one of each pattern, that lap less than {@code lap}.
     *
     * @param offset where the second pattern's run begins, measured from the start of the first's
     */
    public static int violations(Pattern first, Pattern second, long offset, long lap) {
        return violations(first, second, offset, lap, Integer.MAX_VALUE);
    }

    /** The same, or {@code enough} if there are so many or more. */
    public static int violations(Pattern first, Pattern second, long offset, long lap, int enough) {
        int count = 0;
        int from = 0;
        for (int joint = 0; joint < first.joints() && count < enough; joint++) {
            while (from < second.joints() && !reaches(first, joint, second, from, offset, lap)) {
                from++;
            }
            for (int other = from; other < second.joints()
                    && starts(first, joint, second, other, offset, lap); other++) {
                count++;
            }
        }
        return Math.min(count, enough);
    }

    /**
     * Short laps between two patterns, told apart by what joints they are between.
     *
     * @param ends of joints at the ends of both runs
     * @param first of joints between pieces of the first with joints at the ends of the second
     * @param second the other way round
     * @param between of joints between pieces of both
     */
    public record Apart(int ends, int first, int second, int between) {
    }

    /**
     * The pairs that {@link #violations} counts, told apart.
     *
     * @param lower what the first fills
     * @param upper what the second fills
     */
    public static Apart apart(RunShape lower, Pattern first, RunShape upper, Pattern second, long offset, long lap) {
        int[] counts = new int[4];
        for (int joint = 0; joint < first.joints(); joint++) {
            for (int other = 0; other < second.joints(); other++) {
                if (reaches(first, joint, second, other, offset, lap)
                        && starts(first, joint, second, other, offset, lap)) {
                    counts[(lower.isEnd(joint, first.joints()) ? 0 : 1)
                            + (upper.isEnd(other, second.joints()) ? 0 : 2)]++;
                }
            }
        }
        return new Apart(counts[0], counts[1], counts[2], counts[3]);
    }

    /** Whether the end of the second's joint lies less than a lap before the first's joint, or further on. */
    private static boolean reaches(Pattern first, int joint, Pattern second, int other, long offset, long lap) {
        long rough = first.roughStart(joint) - second.roughEnd(other) - Pattern.rough(offset + lap);
        if (Math.abs(rough) > ROUGHNESS) {
            return rough < 0;
        }
        long m = first.joints();
        long n = second.joints();
        long start = first.jointStart(joint) * n;
        long otherEnd = (second.jointStart(other) + second.jointTotal() + offset * n) * m;
        return start - otherEnd < lap * m * n;
    }

    /** Whether the start of the second's joint lies less than a lap after the first's joint, or further back. */
    private static boolean starts(Pattern first, int joint, Pattern second, int other, long offset, long lap) {
        long rough = second.roughStart(other) - first.roughEnd(joint) - Pattern.rough(lap - offset);
        if (Math.abs(rough) > ROUGHNESS) {
            return rough < 0;
        }
        long m = first.joints();
        long n = second.joints();
        long end = (first.jointStart(joint) + first.jointTotal()) * n;
        long otherStart = (second.jointStart(other) + offset * n) * m;
        return otherStart - end < lap * m * n;
    }
}
