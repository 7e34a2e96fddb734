package org.coursewright.bond.internal;

import java.util.BitSet;

/**
 * Tells whether two runs of consecutive courses can be filled from given pieces so that all laps are kept. Both are
 * filled side by side, always the one that lags behind; then only the last joints of both have to be compared, because
 * whatever comes later lies beyond a joint that keeps its lap already. Joints at ends that are too near however the runs
 * are filled are left out of account. A "no" is a proof, as no order is left out; the search takes at most the product
 * of the numbers of states.
 */
final class PairFit {

    private static final int MOST_STATES = 4_000_000;

    private final Masonry masonry;
    private final RunShape first;
    private final RunShape second;
    private final long offset;
    private final boolean forced;
    private long steps;

    /**
     * @param offset where the second run begins, measured from the start of the first
     * @param steps how many steps may be taken before the search gives up
     */
    PairFit(Masonry masonry, RunShape first, RunShape second, long offset, long steps) {
        this.masonry = masonry;
        this.first = first;
        this.second = second;
        this.offset = offset;
        this.steps = steps;
        forced = new ForcedViolations(masonry).between(first, second, offset) > 0;
    }

    /** Whether the search has given up: nothing is known then. */
    boolean isExhausted() {
        return steps <= 0;
    }

    /** Whether both sets can be ordered so; {@code true} also if the search has given up. */
    boolean fits(PieceSet one, PieceSet other) {
        long product = PieceOrders.states(one, masonry) * PieceOrders.states(other, masonry);
        if (product > MOST_STATES) {
            steps = 0;
        }
        return isExhausted() || new Search(one, other).run();
    }

    /** One search, depth first. */
    private final class Search {
        private final PieceOrders ones;
        private final PieceOrders others;
        private final long oneWidth;
        private final long otherWidth;
        private final long lap;
        private final BitSet seen = new BitSet();
        private int[] stack = new int[64];
        private int size;

        Search(PieceSet one, PieceSet other) {
            long oneScale = Math.max(1, one.joints());
            long otherScale = Math.max(1, other.joints());
            ones = new PieceOrders(first, masonry, one, 0, otherScale);
            others = new PieceOrders(second, masonry, other, offset, oneScale);
            oneWidth = one.jointTotal() * otherScale;
            otherWidth = other.jointTotal() * oneScale;
            lap = masonry.lap() * oneScale * otherScale;
        }

        boolean run() {
            if (one(0, 0)) {
                return true;
            }
            while (size > 0) {
                int state = stack[--size];
                if (one(state / others.states(), state % others.states())) {
                    return true;
                }
                if (--steps <= 0) {
                    return true;
                }
            }
            return false;
        }

        /** Goes one piece on from a state; says whether that was the end. */
        private boolean one(int at, int other) {
            if (ones.isLast(at) && others.isLast(other)) {
                return true;
            }
            if (others.isLast(other) || !ones.isLast(at) && lags(at, other)) {
                for (int kind = 0; kind < ones.kinds(); kind++) {
                    visit(ones.next(at, kind), other);
                }
            } else {
                for (int kind = 0; kind < others.kinds(); kind++) {
                    visit(at, others.next(other, kind));
                }
            }
            return false;
        }

        private boolean lags(int at, int other) {
            if (!ones.hasJoint(at)) {
                return true;
            }
            return others.hasJoint(other) && ones.jointStart(at) <= others.jointStart(other);
        }

        private void visit(int at, int other) {
            if (at < 0 || other < 0 || !laps(at, other)) {
                return;
            }
            int state = at * others.states() + other;
            if (!seen.get(state)) {
                seen.set(state);
                if (size == stack.length) {
                    stack = java.util.Arrays.copyOf(stack, 2 * size);
                }
                stack[size++] = state;
            }
        }

        private boolean laps(int at, int other) {
            if (!ones.hasJoint(at) || !others.hasJoint(other)) {
                return true;
            }
            long start = ones.jointStart(at);
            long otherStart = others.jointStart(other);
            boolean kept = otherStart - start - oneWidth >= lap || start - otherStart - otherWidth >= lap;
            return kept || forced && isEnd(ones, at) && isEnd(others, other);
        }

        private boolean isEnd(PieceOrders orders, int state) {
            return state == 0 || orders.isLast(state);
        }
    }
}
