package org.coursewright.bond.internal;

/**
 * Counts joints of consecutive courses that lap too little. A joint [a, b] and a joint [p, q] lap {@code p - b} or
 * {@code a - q}, whichever is the greater; positions are fractions and compared exactly.
 */
final class LapCheck {

    private LapCheck() {
    }

    /**
     * Pairs of joints, one of each pattern, that lap less than {@code lap}.
     *
     * @param offset where the second pattern's run begins, measured from the start of the first's
     */
    static int violations(Pattern first, Pattern second, long offset, long lap) {
        int count = 0;
        int from = 0;
        for (int joint = 0; joint < first.joints(); joint++) {
            while (from < second.joints() && !reaches(first, joint, second, from, offset, lap)) {
                from++;
            }
            for (int other = from; other < second.joints()
                    && starts(first, joint, second, other, offset, lap); other++) {
                count++;
            }
        }
        return count;
    }

    /** Whether the end of the second's joint lies less than a lap before the first's joint, or further on. */
    private static boolean reaches(Pattern first, int joint, Pattern second, int other, long offset, long lap) {
        long m = first.joints();
        long n = second.joints();
        long start = first.jointStart(joint) * n;
        long otherEnd = (second.jointStart(other) + second.jointTotal() + offset * n) * m;
        return start - otherEnd < lap * m * n;
    }

    /** Whether the start of the second's joint lies less than a lap after the first's joint, or further back. */
    private static boolean starts(Pattern first, int joint, Pattern second, int other, long offset, long lap) {
        long m = first.joints();
        long n = second.joints();
        long end = (first.jointStart(joint) + first.jointTotal()) * n;
        long otherStart = (second.jointStart(other) + offset * n) * m;
        return otherStart - end < lap * m * n;
    }
}
