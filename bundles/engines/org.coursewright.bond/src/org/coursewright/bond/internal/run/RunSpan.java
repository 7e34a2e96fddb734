package org.coursewright.bond.internal.run;

import org.coursewright.bond.RunEnd;

/**
 * Where a run lies in its wall.
 *
 * @param course index of its course, from 0
 * @param from where it begins
 * @param to where it ends, greater than {@code from}
 * @param start how it begins
 * @param end how it ends
 * @param topFrom where masonry begins at the top of the course
 * @param topTo where masonry ends at the top of the course
 * @param pins what somebody decided about it
 */
public record RunSpan(int course, long from, long to, RunEnd start, RunEnd end, long topFrom, long topTo,
        RunPins pins) {

    /** What decides how it may be filled. */
    public RunShape shape() {
        long length = to - from;
        return new RunShape(length, start, end, clamp(topFrom - from, length), clamp(to - topTo, length), pins);
    }

    private static long clamp(long zone, long length) {
        return Math.max(0, Math.min(zone, length));
    }
}
