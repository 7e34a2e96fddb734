package org.coursewright.bond.internal.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.internal.lap.ForcedViolations;
import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.pieces.PieceOrders;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.PieceKind;
import org.coursewright.bond.internal.run.PieceSet;

/**
 * Tells whether two runs of consecutive courses can be filled from given pieces so that all laps are kept. Both are
 * filled side by side, always the one that lags behind; then only the last joints of both have to be compared, because
 * whatever comes later lies beyond a joint that keeps its lap already. Joints at ends that are too near however the runs
 * are filled are left out of account. A "no" is a proof, as no order is left out; a search takes at most the product
 * of the numbers of states. Sets that differ only in the lengths of their cut pieces are searched together, each joint
 * anywhere it lies for one of them: what does not fit so fits for none.
 */
public final class PairFit {

    private static final int MOST_STATES = 1_000_000;

    private final Masonry masonry;
    private final long offset;
    private final Windows firstWindows;
    private final Windows secondWindows;
    private final boolean forced;
    private final PatternPool firstPool;
    private final PatternPool secondPool;
    /** States of the first run in the order visited, and of the second beside them. */
    private final IntList firstStates = new IntList();
    private final IntList secondStates = new IntList();
    private final IntList parents = new IntList();
    private final IntList open = new IntList();
    /** States of the search at hand; kept from search to search, for clearing a few is cheaper than growing anew. */
    private long[] seen = new long[0];
    private long steps;
    private boolean skipped;

    /**
     * @param offset where the second run begins, measured from the start of the first
     * @param firstWindows where no joint between pieces of the first run may lie
     * @param secondWindows the same for the second
     * @param steps how many steps may be taken before the search gives up
     */
    public PairFit(Masonry masonry, PatternPool firstPool, PatternPool secondPool, long offset, Windows firstWindows,
            Windows secondWindows, long steps) {
        this.masonry = masonry;
        this.firstPool = firstPool;
        this.secondPool = secondPool;
        this.offset = offset;
        this.firstWindows = firstWindows;
        this.secondWindows = secondWindows;
        this.steps = steps;
        forced = new ForcedViolations(masonry).between(firstPool.shape(), secondPool.shape(), offset) > 0;
    }

    /** Whether sets too large to search have been passed over. */
    public boolean hasSkipped() {
        return skipped;
    }

    /** Whether the search has given up: nothing is known then. */
    public boolean isExhausted() {
        return steps <= 0;
    }

    /**
     * Orders of one of the sets of each run that keep all laps.
     *
     * @return the lower run's pattern and the upper run's; empty if there are none or the search has given up
     */
    public Optional<List<Pattern>> fit(List<PieceSet> lower, List<PieceSet> upper) {
        for (List<PieceSet> ones : firstPool.alike(lower)) {
            for (List<PieceSet> others : secondPool.alike(upper)) {
                Optional<List<Pattern>> found = fitAlike(ones, others);
                if (found.isPresent() || isExhausted()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    /** Sets of one make-up are looked at together; only where some of them might fit they are told apart. */
    private Optional<List<Pattern>> fitAlike(List<PieceSet> ones, List<PieceSet> others) {
        long states = ones.get(0).states() * others.get(0).states();
        boolean large = states > MOST_STATES;
        skipped |= large;
        if (large || isExhausted()) {
            return Optional.empty();
        }
        int words = Math.toIntExact(states / Long.SIZE) + 1;
        seen = seen.length < words ? new long[words] : seen;
        PieceOrders one = firstPool.orders(ones);
        PieceOrders other = secondPool.orders(others);
        Search search = new Search(one, other);
        int last = search.run();
        boolean apart = ones.size() == 1 && others.size() == 1;
        Optional<List<Pattern>> found = last >= 0 && apart ? Optional.of(search.patterns(last)) : Optional.empty();
        search.forget();
        return last < 0 || apart ? found : fitHalves(one, other, ones, others);
    }

    private Optional<List<Pattern>> fitHalves(PieceOrders one, PieceOrders other, List<PieceSet> ones,
            List<PieceSet> others) {
        boolean first = ones.size() >= others.size();
        for (List<PieceSet> half : (first ? one : other).halves()) {
            Optional<List<Pattern>> found = first ? fitAlike(half, others) : fitAlike(ones, half);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** One search, depth first. */
    private final class Search {
        private final PieceOrders ones;
        private final PieceOrders others;
        private final long oneScale;
        private final long otherScale;
        private final long shift;
        private final long lap;
        private final Windows.Grid oneWindows;
        private final Windows.Grid otherWindows;

        Search(PieceOrders ones, PieceOrders others) {
            this.ones = ones;
            this.others = others;
            oneScale = Math.max(1, ones.joints());
            otherScale = Math.max(1, others.joints());
            oneWindows = firstWindows.grid(ones.joints());
            otherWindows = secondWindows.grid(others.joints());
            shift = offset * oneScale * otherScale;
            lap = masonry.lap() * oneScale * otherScale;
        }

        /** @return where the last step of both stands in the lists of states, or -1 if there is no way to it */
        int run() {
            visit(0, 0, -1);
            while (!open.isEmpty() && !isExhausted()) {
                steps--;
                int index = open.removeLast();
                int at = firstStates.get(index);
                int beside = secondStates.get(index);
                if (ones.isLast(at) && others.isLast(beside)) {
                    return index;
                }
                extend(at, beside, index);
            }
            return -1;
        }

        void forget() {
            for (int index = 0; index < parents.size(); index++) {
                seen[state(firstStates.get(index), secondStates.get(index)) / Long.SIZE] = 0;
            }
            firstStates.clear();
            secondStates.clear();
            parents.clear();
            open.clear();
        }

        private int state(int at, int beside) {
            return at * others.states() + beside;
        }

        /** Goes one piece on in the run that lags behind. */
        private void extend(int at, int beside, int index) {
            if (others.isLast(beside) || !ones.isLast(at) && lags(at, beside)) {
                for (int kind = 0; kind < ones.kinds(); kind++) {
                    int next = ones.next(at, kind);
                    if (next >= 0 && !isBlocked(ones, next, oneWindows)) {
                        visit(next, beside, index);
                    }
                }
            } else {
                for (int kind = 0; kind < others.kinds(); kind++) {
                    int next = others.next(beside, kind);
                    if (next >= 0 && !isBlocked(others, next, otherWindows)) {
                        visit(at, next, index);
                    }
                }
            }
        }

        private boolean lags(int at, int beside) {
            if (!ones.hasJoint(at)) {
                return true;
            }
            return others.hasJoint(beside) && start(at) <= otherStart(beside);
        }

        /** Whether a joint between pieces meets a window, whichever of the sets it is. */
        private boolean isBlocked(PieceOrders orders, int state, Windows.Grid windows) {
            return !orders.isLast(state) && windows.isMet(orders.startMost(state), orders.endLeast(state));
        }

        private void visit(int at, int beside, int parent) {
            if (!laps(at, beside)) {
                return;
            }
            int state = state(at, beside);
            long bit = 1L << state % Long.SIZE;
            if ((seen[state / Long.SIZE] & bit) == 0) {
                seen[state / Long.SIZE] |= bit;
                open.add(parents.size());
                firstStates.add(at);
                secondStates.add(beside);
                parents.add(parent);
            }
        }

        private boolean laps(int at, int beside) {
            if (!ones.hasJoint(at) || !others.hasJoint(beside)) {
                return true;
            }
            boolean kept = otherStart(beside) - ones.endLeast(at) * otherScale >= lap
                    || start(at) - others.endLeast(beside) * oneScale - shift >= lap;
            return kept || forced && isEnd(ones, at) && isEnd(others, beside);
        }

        private long start(int at) {
            return ones.startMost(at) * otherScale;
        }

        private long otherStart(int beside) {
            return others.startMost(beside) * oneScale + shift;
        }

        private boolean isEnd(PieceOrders orders, int state) {
            return state == 0 || orders.isLast(state);
        }

        List<Pattern> patterns(int last) {
            List<PieceKind> lower = new ArrayList<>();
            List<PieceKind> upper = new ArrayList<>();
            for (int index = last; parents.get(index) >= 0; index = parents.get(index)) {
                int before = parents.get(index);
                int at = firstStates.get(index);
                if (at == firstStates.get(before)) {
                    upper.add(0, others.between(secondStates.get(before), secondStates.get(index)));
                } else {
                    lower.add(0, ones.between(firstStates.get(before), at));
                }
            }
            return List.of(ones.pattern(lower), others.pattern(upper));
        }
    }
}
