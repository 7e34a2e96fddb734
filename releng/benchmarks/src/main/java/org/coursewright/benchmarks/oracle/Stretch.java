package org.coursewright.benchmarks.oracle;

import org.coursewright.bond.RunEnd;
import org.coursewright.measure.Length;

/**
 * A stretch of one course that has to be filled.
 *
 * @param course index of the course, from 0
 * @param from where it begins along the wall (1/320 mm)
 * @param to where it ends along the wall (1/320 mm)
 * @param start how it begins
 * @param end how it ends
 * @param startsAgainst the masonry it begins at in every course, or empty
 * @param endsAgainst the masonry it ends at in every course, or empty
 * @param clearFrom from here on no piece is crossed by a rake at the start (1/320 mm)
 * @param clearTo up to here no piece is crossed by a rake at the end (1/320 mm)
 */
public record Stretch(int course, long from, long to, RunEnd start, RunEnd end, String startsAgainst,
        String endsAgainst, long clearFrom, long clearTo) {

    /** @return how long it is (1/320 mm) */
    long length() {
        return to - from;
    }

    /** @return head joints of {@code pieces} pieces: one between any two, one more at each end that is a joint */
    int joints(int pieces) {
        return pieces - 1 + startJoint() + (end == RunEnd.JOINT ? 1 : 0);
    }

    /** @return 1 if it begins with a joint, else 0 */
    int startJoint() {
        return start == RunEnd.JOINT ? 1 : 0;
    }

    @Override
    public String toString() {
        return "%s to %s in course %d (%s, %s)".formatted(Length.ofUnits(from), Length.ofUnits(to), course + 1, start,
                end);
    }
}
