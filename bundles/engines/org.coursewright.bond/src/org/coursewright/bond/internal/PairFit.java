package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.bond.Piece;

/**
 * Tells whether two runs of consecutive courses can be filled from given pieces so that all laps are kept. Both are
 * filled side by side, always the one that lags behind; then only the last joints of both have to be compared, because
 * whatever comes later lies beyond a joint that keeps its lap already. Joints at ends that are too near however the runs
 * are filled are left out of account. A "no" is a proof, as no order is left out; the search takes at most the product
 * of the numbers of states.
 */
final class PairFit {

    private static final int MOST_STATES = 1_000_000;

    private final Masonry masonry;
    private final RunShape first;
    private final RunShape second;
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
    /** By set, which states of it meet a window; sets compare by identity. */
    private final Map<PieceSet, boolean[]> firstBlocked = new IdentityHashMap<>();
    private final Map<PieceSet, boolean[]> secondBlocked = new IdentityHashMap<>();
    private long steps;
    private boolean skipped;

    /**
     * @param offset where the second run begins, measured from the start of the first
     * @param firstWindows where no joint between pieces of the first run may lie
     * @param secondWindows the same for the second
     * @param steps how many steps may be taken before the search gives up
     */
    PairFit(Masonry masonry, PatternPool firstPool, PatternPool secondPool, long offset, Windows firstWindows,
            Windows secondWindows, long steps) {
        this.masonry = masonry;
        this.firstPool = firstPool;
        this.secondPool = secondPool;
        first = firstPool.shape();
        second = secondPool.shape();
        this.offset = offset;
        this.firstWindows = firstWindows;
        this.secondWindows = secondWindows;
        this.steps = steps;
        forced = new ForcedViolations(masonry).between(first, second, offset) > 0;
    }

    /** Whether sets too large to search have been passed over. */
    boolean hasSkipped() {
        return skipped;
    }

    /** Whether the search has given up: nothing is known then. */
    boolean isExhausted() {
        return steps <= 0;
    }

    /**
     * Orders of both sets that keep all laps.
     *
     * @return the lower run's pattern and the upper run's; empty if there are none or the search has given up
     */
    Optional<List<Pattern>> fit(PieceSet one, PieceSet other) {
        long states = PieceOrders.states(one) * PieceOrders.states(other);
        boolean large = states > MOST_STATES;
        skipped |= large;
        if (large || isExhausted()) {
            return Optional.empty();
        }
        int words = Math.toIntExact(states / Long.SIZE) + 1;
        seen = seen.length < words ? new long[words] : seen;
        Search search = new Search(one, other);
        Optional<List<Pattern>> found = search.run();
        search.forget();
        return found;
    }

    /** One search, depth first. */
    private final class Search {
        private final PieceSet one;
        private final PieceSet other;
        private final PieceOrders ones;
        private final PieceOrders others;
        private final long oneScale;
        private final long otherScale;
        private final long shift;
        private final long oneWidth;
        private final long otherWidth;
        private final long lap;
        private final boolean[] oneBlocked;
        private final boolean[] otherBlocked;

        Search(PieceSet one, PieceSet other) {
            this.one = one;
            this.other = other;
            oneScale = Math.max(1, one.joints());
            otherScale = Math.max(1, other.joints());
            ones = firstPool.orders(one);
            others = secondPool.orders(other);
            oneBlocked = firstBlocked.computeIfAbsent(one, set -> ones.blocked(firstWindows.grid(set.joints())));
            otherBlocked = secondBlocked.computeIfAbsent(other,
                    set -> others.blocked(secondWindows.grid(set.joints())));
            shift = offset * oneScale * otherScale;
            oneWidth = one.jointTotal() * otherScale;
            otherWidth = other.jointTotal() * oneScale;
            lap = masonry.lap() * oneScale * otherScale;
        }

        Optional<List<Pattern>> run() {
            visit(0, 0, -1);
            while (!open.isEmpty() && !isExhausted()) {
                steps--;
                int index = open.removeLast();
                int at = firstStates.get(index);
                int beside = secondStates.get(index);
                if (ones.isLast(at) && others.isLast(beside)) {
                    return Optional.of(patterns(index));
                }
                extend(at, beside, index);
            }
            return Optional.empty();
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
                    if (next >= 0 && !oneBlocked[next]) {
                        visit(next, beside, index);
                    }
                }
            } else {
                for (int kind = 0; kind < others.kinds(); kind++) {
                    int next = others.next(beside, kind);
                    if (next >= 0 && !otherBlocked[next]) {
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
            long start = start(at);
            long otherStart = otherStart(beside);
            boolean kept = otherStart - start - oneWidth >= lap || start - otherStart - otherWidth >= lap;
            return kept || forced && isEnd(ones, at) && isEnd(others, beside);
        }

        private long start(int at) {
            return ones.jointStart(at) * otherScale;
        }

        private long otherStart(int beside) {
            return others.jointStart(beside) * oneScale + shift;
        }

        private boolean isEnd(PieceOrders orders, int state) {
            return state == 0 || orders.isLast(state);
        }

        private List<Pattern> patterns(int last) {
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
            return List.of(pattern(first, one, lower), pattern(second, other, upper));
        }

        private Pattern pattern(RunShape shape, PieceSet set, List<PieceKind> order) {
            return new Pattern(shape, masonry, order.stream().mapToLong(PieceKind::length).toArray(),
                    order.stream().map(PieceKind::origin).toArray(Piece.Kind[]::new), set.jointTotal());
        }
    }
}
