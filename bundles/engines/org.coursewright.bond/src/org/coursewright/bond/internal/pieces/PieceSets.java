package org.coursewright.bond.internal.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.PieceSet;
import org.coursewright.bond.internal.run.RunShape;

/**
 * Finds the pieces that fill a level run. With w whole units, specials of total length S and c pieces cut to total length
 * X, all joints together are what is left of the run, J = length - w·whole - S - X, and J must lie between m times the
 * least and m times the most joint, m being the number of joints. For given c and specials the whole units possible form
 * an interval, so that very few have to be tried.
 */
public final class PieceSets {

    private static final int CUT_TOTALS = 24;
    private static final int SPLITS = 8;
    private static final int MOST_SETS = 600;

    private final RunShape shape;
    private final Masonry masonry;
    private final boolean all;
    private final int most;

    /** Sets spread over all that is possible. */
    public PieceSets(RunShape shape, Masonry masonry) {
        this(shape, masonry, false, MOST_SETS);
    }

    private PieceSets(RunShape shape, Masonry masonry, boolean all, int most) {
        this.shape = shape;
        this.masonry = masonry;
        this.all = all;
        this.most = most;
    }

    /**
     * All sets with that many pieces cut to length.
     *
     * @return empty if there are more of them than {@code most}, or the run is raked
     */
    public static Optional<List<PieceSet>> all(RunShape shape, Masonry masonry, int cuts, int most) {
        SpecialCounts specials = SpecialCounts.upTo(Integer.MAX_VALUE, masonry, shape.length());
        if (shape.isRaked() || !specials.isComplete()) {
            return Optional.empty();
        }
        List<PieceSet> sets = new PieceSets(shape, masonry, true, most).withCuts(cuts, Integer.MAX_VALUE);
        return sets.size() > most ? Optional.empty() : Optional.of(sets);
    }

    /**
     * The least number of cut pieces with which the run can be filled at all, the order of pieces left open; proven.
     *
     * @return empty if nothing fills the run
     */
    public OptionalInt leastCuts() {
        SpecialCounts specials = SpecialCounts.upTo(Integer.MAX_VALUE, masonry, shape.length());
        for (int cuts = 0; cuts <= mostCuts(); cuts++) {
            for (int[] counts : specials.counts()) {
                if (!frames(counts, cuts, 1).isEmpty()) {
                    return OptionalInt.of(specials.isComplete() ? cuts : 0);
                }
            }
        }
        return OptionalInt.empty();
    }

    /** Sets of pieces with that many pieces cut to length; a bounded selection. */
    public List<PieceSet> withCuts(int cuts, int mostSpecials) {
        List<PieceSet> sets = new ArrayList<>();
        for (int[] counts : SpecialCounts.upTo(mostSpecials, masonry, shape.length()).counts()) {
            for (Frame frame : frames(counts, cuts, Integer.MAX_VALUE)) {
                frame.addTo(sets);
                if (sets.size() > most) {
                    return sets;
                }
            }
        }
        return sets;
    }

    private long mostCuts() {
        return masonry.canCut() ? shape.length() / (masonry.cutLeast() + masonry.least()) + 1 : 0;
    }

    private List<Frame> frames(int[] specials, int cuts, int enough) {
        List<Frame> frames = new ArrayList<>();
        if (cuts > 0 && !masonry.canCut()) {
            return frames;
        }
        Frame empty = new Frame(0, specials, cuts);
        long wholeMost = Math.floorDiv(empty.left() - empty.jointLeast() - empty.cutLeast(),
                masonry.whole() + masonry.least());
        long wholeLeast = -Math.floorDiv(
                -(empty.left() - empty.jointMost() - empty.cutMost()),
                masonry.whole() + masonry.most());
        for (long wholes = wholeMost; wholes >= Math.max(0, wholeLeast) && frames.size() < enough; wholes--) {
            Frame frame = new Frame(Math.toIntExact(wholes), specials, cuts);
            if (frame.isPossible()) {
                frames.add(frame);
            }
        }
        return frames;
    }

    /** How many pieces of which kind, the lengths of those cut still open. */
    private final class Frame {
        private final int wholes;
        private final int[] specials;
        private final int cuts;
        private final long left;
        private final int joints;

        Frame(int wholes, int[] specials, int cuts) {
            this.wholes = wholes;
            this.specials = specials;
            this.cuts = cuts;
            long rest = shape.length() - wholes * masonry.whole();
            int pieces = wholes + cuts;
            for (int kind = 0; kind < specials.length; kind++) {
                rest -= specials[kind] * masonry.specials().get(kind);
                pieces += specials[kind];
            }
            left = rest;
            joints = pieces - 1 + shape.startJoints() + shape.endJoints();
        }

        long left() {
            return left;
        }

        long jointLeast() {
            return joints * masonry.least();
        }

        long jointMost() {
            return joints * masonry.most();
        }

        long cutLeast() {
            return cuts == 0 ? 0 : cuts * masonry.cutLeast();
        }

        long cutMost() {
            return cuts == 0 ? 0 : cuts * masonry.cutMost();
        }

        private long cutTotalFrom() {
            return Math.max(cutLeast(), left - jointMost());
        }

        private long cutTotalTo() {
            return Math.min(cutMost(), left - jointLeast());
        }

        boolean isPossible() {
            boolean hasPieces = joints - shape.startJoints() - shape.endJoints() >= 0;
            return hasPieces && Spread.firstMultiple(cutTotalFrom(), stepOfTotal()) <= cutTotalTo();
        }

        /** Without cuts the total is zero, a multiple of anything. */
        private long stepOfTotal() {
            return cuts == 0 ? Long.MAX_VALUE / 4 : masonry.cutStep();
        }

        void addTo(List<PieceSet> sets) {
            if (cuts == 0) {
                sets.add(new PieceSet(wholes, specials, new long[0], joints, left));
                return;
            }
            for (long total : Spread.multiples(cutTotalFrom(), cutTotalTo(), masonry.cutStep(),
                    all ? most + 2 : CUT_TOTALS)) {
                split(sets, new long[cuts], 0, total);
            }
        }

        /** Cut lengths that add up to the total, none shorter than the one before. */
        private void split(List<PieceSet> sets, long[] lengths, int index, long total) {
            if (sets.size() > most) {
                return;
            }
            int more = cuts - index - 1;
            if (more == 0) {
                lengths[index] = total;
                sets.add(new PieceSet(wholes, specials, lengths.clone(), joints, left - sum(lengths)));
                return;
            }
            long from = Math.max(index == 0 ? masonry.cutLeast() : lengths[index - 1],
                    total - more * masonry.cutMost());
            for (long length : Spread.multiples(from, total / (more + 1), masonry.cutStep(),
                    all ? most + 2 : SPLITS)) {
                lengths[index] = length;
                split(sets, lengths, index + 1, total - length);
            }
        }

        private static long sum(long[] lengths) {
            long sum = 0;
            for (long length : lengths) {
                sum += length;
            }
            return sum;
        }
    }
}
