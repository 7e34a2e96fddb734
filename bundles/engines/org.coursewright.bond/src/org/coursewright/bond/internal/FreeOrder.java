package org.coursewright.bond.internal;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.Piece;

/**
 * Finds an order of pieces in which no joint between them meets a window. The pieces other than whole units that have
 * been used make a rail; along a rail whole units follow one another. A rail is entered from rails with one piece less
 * and followed as long as no joint meets a window.
 */
final class FreeOrder {

    private static final int MOST_STATES = 100_000;

    private final RunShape shape;
    private final Masonry masonry;
    private final PieceSet set;
    private final Windows.Grid windows;
    private final List<PieceKind> odd;
    private final int[] strides;
    private final int wholes;
    private final int rails;
    private boolean[][] reached = new boolean[0][];

    FreeOrder(RunShape shape, Masonry masonry, PieceSet set, Windows.Grid windows) {
        this.shape = shape;
        this.masonry = masonry;
        this.set = set;
        this.windows = windows;
        List<PieceKind> kinds = PieceKind.of(set, masonry);
        wholes = set.wholes();
        odd = wholes > 0 ? kinds.subList(0, kinds.size() - 1) : kinds;
        strides = new int[odd.size()];
        long product = 1;
        for (int kind = 0; kind < strides.length; kind++) {
            strides[kind] = (int) product;
            product = Math.min(MOST_STATES, product * (odd.get(kind).count() + 1));
        }
        rails = (int) product;
    }

    Optional<Pattern> find() {
        if ((long) rails * (wholes + 1) > MOST_STATES) {
            return Optional.empty();
        }
        reached = new boolean[rails][];
        for (int rail = 0; rail < rails; rail++) {
            follow(rail);
        }
        return reached[rails - 1] != null && reached[rails - 1][wholes] ? Optional.of(pattern()) : Optional.empty();
    }

    private int used(int rail, int kind) {
        return rail / strides[kind] % (odd.get(kind).count() + 1);
    }

    /** Marks how many whole units may have been used when the rail's pieces have. */
    private void follow(int rail) {
        if (rail > 0 && !isEntered(rail)) {
            return;
        }
        boolean[] entry = entry(rail);
        int first = 0;
        while (first <= wholes && !entry[first]) {
            first++;
        }
        if (first > wholes) {
            return;
        }
        boolean any = walk(rail, entry, first);
        reached[rail] = any ? entry : null;
    }

    private boolean isEntered(int rail) {
        for (int kind = 0; kind < strides.length; kind++) {
            if (used(rail, kind) > 0 && reached[rail - strides[kind]] != null) {
                return true;
            }
        }
        return false;
    }

    private boolean[] entry(int rail) {
        boolean[] entry = new boolean[wholes + 1];
        entry[0] = rail == 0;
        for (int kind = 0; kind < strides.length; kind++) {
            boolean[] before = used(rail, kind) > 0 ? reached[rail - strides[kind]] : null;
            for (int count = 0; before != null && count <= wholes; count++) {
                entry[count] |= before[count];
            }
        }
        return entry;
    }

    /** Turns entries into all that is reached; the joint after the pieces moves on by one module a step. */
    private boolean walk(int rail, boolean[] entry, int first) {
        long[] lows = windows.lows();
        long[] highs = windows.highs();
        long joint = set.jointTotal();
        long module = masonry.whole() * set.joints() + joint;
        long at = position(rail) + first * module;
        int low = 0;
        int high = 0;
        boolean any = false;
        for (int count = first; count <= wholes; count++, at += module) {
            if (entry[count] || count > first && entry[count - 1]) {
                while (low < lows.length && lows[low] < at + joint) {
                    low++;
                }
                while (high < highs.length && highs[high] <= at) {
                    high++;
                }
                entry[count] = low == high || isEnd(rail, count);
                any |= entry[count];
            }
        }
        return any;
    }

    /** Before the first piece and after the last there is no joint between pieces. */
    private boolean isEnd(int rail, int count) {
        return rail == 0 && count == 0 || rail == rails - 1 && count == wholes;
    }

    /** Where the joint after the rail's pieces begins without any whole unit. */
    private long position(int rail) {
        long sum = 0;
        int pieces = 0;
        for (int kind = 0; kind < strides.length; kind++) {
            int used = used(rail, kind);
            sum += used * odd.get(kind).length();
            pieces += used;
        }
        return sum * set.joints() + (pieces - 1 + shape.startJoints()) * set.jointTotal();
    }

    private Pattern pattern() {
        long[] pieces = new long[set.pieces()];
        Piece.Kind[] kinds = new Piece.Kind[pieces.length];
        Arrays.fill(pieces, masonry.whole());
        Arrays.fill(kinds, Piece.Kind.WHOLE);
        int rail = rails - 1;
        int count = wholes;
        for (int piece = pieces.length - 1; piece >= 0; piece--) {
            if (count > 0 && reached[rail][count - 1]) {
                count--;
            } else {
                int kind = entered(rail, count);
                pieces[piece] = odd.get(kind).length();
                kinds[piece] = odd.get(kind).origin();
                rail -= strides[kind];
            }
        }
        return new Pattern(shape, masonry, pieces, kinds, set.jointTotal());
    }

    private int entered(int rail, int count) {
        for (int kind = 0; kind < strides.length; kind++) {
            boolean[] before = used(rail, kind) > 0 ? reached[rail - strides[kind]] : null;
            if (before != null && before[count]) {
                return kind;
            }
        }
        throw new IllegalStateException("Rail %d was entered from nowhere.".formatted(rail));
    }
}
