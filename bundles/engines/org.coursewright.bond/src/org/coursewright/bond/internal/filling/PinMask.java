package org.coursewright.bond.internal.filling;

import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunPins;
import org.coursewright.bond.internal.run.RunShape;

/**
 * Keeps pins while a run is filled piece after piece: which pieces may follow which shortfalls, so that every pinned
 * position is covered by a piece of the pinned length and lies in no joint. Positions are multiplied by the number of joints,
 * or by one if there is none.
 */
final class PinMask {

    private final RunShape shape;
    private final Masonry masonry;
    private final Shortfalls shortfalls;

    PinMask(RunShape shape, Masonry masonry, Shortfalls shortfalls) {
        this.shape = shape;
        this.masonry = masonry;
        this.shortfalls = shortfalls;
    }

    boolean isEmpty() {
        return shape.pins().pieces().isEmpty();
    }

    /** Where the piece after so many others begins if none falls short. */
    private long base(Gauge gauge, int before) {
        return before * masonry.whole() * parts(gauge) + (before + shape.startJoints()) * gauge.jointTotal();
    }

    private static long parts(Gauge gauge) {
        return Math.max(gauge.joints(), 1);
    }

    /** Whether a piece may come after so many others with that shortfall. */
    boolean allows(Gauge gauge, int before, long shortfall, long length) {
        long from = base(gauge, before) - shortfall * parts(gauge);
        long to = from + length * parts(gauge);
        return shape.pins().pieces().stream().allMatch(pin -> {
            long at = pin.at() * parts(gauge);
            boolean covered = from <= at && at < to;
            boolean inJoint = to <= at && at < to + gauge.jointTotal();
            return !inJoint && (!covered || length == pin.length());
        });
    }

    /** Whether no pinned position lies in the joint at the start of the run. */
    boolean isStartClear(Gauge gauge) {
        return shape.startJoints() == 0 || shape.pins().pieces().stream()
                .allMatch(pin -> pin.at() * parts(gauge) >= gauge.jointTotal());
    }

    /** Leaves of the shortfalls of so many pieces those that a piece of the length may follow. */
    void restrict(long[] row, int words, Gauge gauge, int before, long length) {
        long parts = parts(gauge);
        long base = base(gauge, before);
        long[] struck = new long[words * shortfalls.residues()];
        for (RunPins.PinnedPiece pin : shape.pins().pieces()) {
            long beyond = base - pin.at() * parts;
            if (length != pin.length()) {
                shortfalls.mark(struck, words, parts, beyond - 1, beyond + length * parts);
            }
            shortfalls.mark(struck, words, parts, beyond + length * parts - 1,
                    beyond + length * parts + gauge.jointTotal());
        }
        for (int word = 0; word < struck.length; word++) {
            row[word] &= ~struck[word];
        }
    }
}
