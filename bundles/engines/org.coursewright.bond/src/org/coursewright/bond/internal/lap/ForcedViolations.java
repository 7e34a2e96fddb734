package org.coursewright.bond.internal.lap;

import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunShape;

/**
 * Counts the lap violations that two runs of consecutive courses have however they are filled. A run that ends with a
 * joint has one there of at least the least width; where two such ends are nearer than the least lap, as at a butt joint
 * or beside a lintel two courses high, no filling can keep the lap.
 */
public final class ForcedViolations {

    private final Masonry masonry;

    /** @param masonry whose laps are to be kept */
    public ForcedViolations(Masonry masonry) {
        this.masonry = masonry;
    }

    /** @param offset where the second run begins, measured from the start of the first */
    public int between(RunShape first, RunShape second, long offset) {
        long[] ones = ends(first, 0);
        long[] others = ends(second, offset);
        int forced = 0;
        for (long one : ones) {
            for (long other : others) {
                boolean near = Math.abs(one - other) < masonry.least() + masonry.lap();
                forced += near ? 1 : 0;
            }
        }
        return forced;
    }

    /** Where the joints at the ends begin if they are as narrow as may be. */
    private long[] ends(RunShape shape, long offset) {
        long[] ends = new long[shape.startJoints() + shape.endJoints()];
        if (shape.startJoints() == 1) {
            ends[0] = offset;
        }
        if (shape.endJoints() == 1) {
            ends[ends.length - 1] = offset + shape.length() - masonry.least();
        }
        return ends;
    }
}
