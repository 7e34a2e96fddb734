package org.coursewright.bond.internal;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.Piece;

/**
 * Finds the order of pieces that meets the fewest windows and, with as few, cuts the fewest pieces under a rake: a
 * shortest path over the numbers of pieces used. Its steps are the product of the counts, each plus one.
 */
final class OrderSearch {

    /** Sets with more states than this are not ordered. */
    private static final int MOST_STATES = 100_000;
    private static final int NONE = Integer.MAX_VALUE;
    /** Cost of a window met, far above the pieces of a run. */
    private static final int VIOLATION = 1 << 12;

    private final RunShape shape;
    private final Masonry masonry;
    private final PieceSet set;
    private final Windows.Grid windows;
    private final List<PieceKind> kinds;
    private final int[] strides;
    private final long states;
    private int furthest;

    OrderSearch(RunShape shape, Masonry masonry, PieceSet set, Windows.Grid windows) {
        this.shape = shape;
        this.masonry = masonry;
        this.set = set;
        this.windows = windows;
        kinds = PieceKind.of(set, masonry);
        strides = new int[kinds.size()];
        long product = 1;
        for (int kind = 0; kind < strides.length; kind++) {
            strides[kind] = (int) Math.min(product, NONE);
            product = Math.min(NONE, product * (kinds.get(kind).count() + 1));
        }
        states = product;
    }

    /**
     * The best order.
     *
     * @param mostViolations orders that meet more windows are not wanted
     * @return empty if there is none
     */
    Optional<Pattern> sequence(int mostViolations) {
        if (states > MOST_STATES) {
            return Optional.empty();
        }
        int limit = (mostViolations + 1) * VIOLATION;
        int[] costs = new int[(int) states];
        byte[] last = new byte[(int) states];
        Arrays.fill(costs, NONE);
        costs[0] = start();
        int[] used = new int[kinds.size()];
        for (int state = 0; state <= furthest; state++) {
            if (costs[state] < limit) {
                extend(state, used, costs, last, limit);
            }
            next(used);
        }
        return costs[costs.length - 1] < limit ? Optional.of(pattern(last)) : Optional.empty();
    }

    private void next(int[] used) {
        for (int kind = 0; kind < used.length; kind++) {
            if (used[kind] < kinds.get(kind).count()) {
                used[kind]++;
                return;
            }
            used[kind] = 0;
        }
    }

    private int start() {
        int cost = shape.startJoints() == 1 ? VIOLATION * windows.count(0, set.jointTotal()) : 0;
        if (set.rakeStart() > 0) {
            cost += VIOLATION * joint(set.rakeStart(), 1);
        }
        return cost;
    }

    private void extend(int state, int[] used, int[] costs, byte[] last, int limit) {
        long sum = set.rakeStart();
        int pieces = set.rakeStart() > 0 ? 1 : 0;
        for (int kind = 0; kind < used.length; kind++) {
            sum += used[kind] * kinds.get(kind).length();
            pieces += used[kind];
        }
        for (int kind = 0; kind < used.length; kind++) {
            PieceKind next = kinds.get(kind);
            if (used[kind] < next.count()) {
                int target = state + strides[kind];
                int cost = costs[state] + rakeCut(sum, pieces, next)
                        + VIOLATION * joint(sum + next.length(), pieces + 1);
                if (cost < costs[target] && cost < limit) {
                    furthest = Math.max(furthest, target);
                    costs[target] = cost;
                    last[target] = (byte) kind;
                }
            }
        }
    }

    /** Windows met by the joint after so many pieces of that total length; none after the last at a face. */
    private int joint(long sum, int pieces) {
        int before = pieces - 1 + shape.startJoints();
        if (before >= set.joints()) {
            return 0;
        }
        long start = sum * set.joints() + before * set.jointTotal();
        return windows.count(start, start + set.jointTotal());
    }

    private int rakeCut(long sum, int pieces, PieceKind kind) {
        return shape.isRaked() && kind.origin() != Piece.Kind.CUT && isUnderRake(sum, pieces, kind.length()) ? 1 : 0;
    }

    private boolean isUnderRake(long sum, int pieces, long length) {
        long parts = Math.max(set.joints(), 1);
        long from = sum * parts + (pieces + shape.startJoints()) * set.jointTotal();
        long to = from + length * parts;
        return from < shape.rakeStart() * parts || to > (shape.length() - shape.rakeEnd()) * parts;
    }

    private Pattern pattern(byte[] last) {
        int count = set.pieces();
        long[] pieces = new long[count];
        Piece.Kind[] origin = new Piece.Kind[count];
        int first = set.rakeStart() > 0 ? 1 : 0;
        int end = count - (set.rakeEnd() > 0 ? 1 : 0);
        int state = last.length - 1;
        for (int piece = end - 1; piece >= first; piece--) {
            PieceKind kind = kinds.get(last[state]);
            pieces[piece] = kind.length();
            origin[piece] = kind.origin();
            state -= strides[last[state]];
        }
        if (first == 1) {
            pieces[0] = set.rakeStart();
            origin[0] = Piece.Kind.CUT;
        }
        if (end < count) {
            pieces[end] = set.rakeEnd();
            origin[end] = Piece.Kind.CUT;
        }
        return new Pattern(shape, masonry, pieces, RakeCut.mark(shape, pieces, origin, set), set.jointTotal());
    }
}
