package org.coursewright.bond.internal.filling;

import java.util.Arrays;

import org.coursewright.bond.internal.choice.BitRow;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunShape;

/**
 * Adds the next piece to a run that is being filled: which shortfalls there may be after it, by how many cuts have been
 * made. A shortfall is one bit, so that a piece of one length is a shift and one cut to any length a few of them.
 */
final class NextPiece {

    private final RunShape shape;
    private final Masonry masonry;
    private final Shortfalls shortfalls;
    private final PinMask pins;
    private Gauge gauge = new Gauge(1, 0, 0, 0);
    private int cuts;
    private int words;
    /** Words of all residues together. */
    private int row;
    private int before;
    private int low;
    private int high;
    private long[] moved = new long[0];
    private long[] struck = new long[0];
    private long[] begun = new long[0];
    private long[] ended = new long[0];

    NextPiece(RunShape shape, Shortfalls shortfalls, PinMask pins) {
        this.shape = shape;
        masonry = shortfalls.masonry();
        this.shortfalls = shortfalls;
        this.pins = pins;
    }

    /**
     * Begins to fill with a gauge.
     *
     * @param wordsOfSet words of a set of shortfalls that leave one residue
     * @param mostCuts cuts that may be made
     */
    void begin(Gauge with, int wordsOfSet, int mostCuts) {
        gauge = with;
        words = wordsOfSet;
        cuts = mostCuts;
        row = words * shortfalls.residues();
        moved = grown(moved, (cuts + 2) * row);
        struck = grown(struck, row);
        begun = grown(begun, row);
        ended = grown(ended, row);
    }

    private static long[] grown(long[] array, int size) {
        return array.length < size ? new long[size] : array;
    }

    /**
     * Turns to the piece after so many others; only some words of every set count.
     *
     * @param from the first of them
     * @param to the last
     */
    void after(int pieces, int from, int to) {
        before = pieces;
        low = from;
        high = to;
        if (shape.isRaked()) {
            findRakes();
        }
    }

    /** One word of what has been added: sets by number of cuts, then by residue. */
    long at(int index) {
        return moved[index];
    }

    private long parts() {
        return Math.max(gauge.joints(), 1);
    }

    /** Forgets what has been added. */
    void clear() {
        for (int set = 0; set < (cuts + 2) * row; set += words) {
            for (int word = low; word <= high; word++) {
                moved[set + word] = 0;
            }
        }
    }

    /** Shortfalls with which the next piece begins under the rake at the start, and with which it ends under the other. */
    private void findRakes() {
        Arrays.fill(begun, 0, row, 0);
        Arrays.fill(ended, 0, row, 0);
        long joints = ((long) before + shape.startJoints()) * gauge.jointTotal();
        if (shape.rakeStart() > 0) {
            shortfalls.mark(begun, words, parts(),
                    (before * masonry.whole() - shape.rakeStart()) * parts() + joints,
                    Long.MAX_VALUE / 4);
        }
        if (shape.rakeEnd() > 0) {
            shortfalls.mark(ended, words, parts(), Long.MIN_VALUE / 4,
                    ((before + 1) * masonry.whole() - shape.length() + shape.rakeEnd()) * parts() + joints);
        }
    }

    /**
     * Adds a piece of every length to what has been reached with so many cuts.
     *
     * @param reached sets of shortfalls, one for each residue
     * @param from where these begin
     * @param made how many cuts
     */
    void add(long[] reached, int from, int made) {
        if (!pins.isEmpty()) {
            addPinned(reached, from, made);
            return;
        }
        for (int residue = 0; residue < shortfalls.residues(); residue++) {
            addWhole(reached, from, made, residue);
            for (int kind = 0; kind < shortfalls.specials(); kind++) {
                addSpecial(reached, from, made, residue, kind);
            }
            if (shortfalls.canCut() && made < cuts) {
                addCut(reached, from, made, residue);
            }
        }
    }

    /** Adds every length for itself, after those shortfalls only that it may follow. */
    private void addPinned(long[] reached, int from, int made) {
        long[] all = Arrays.copyOfRange(reached, from, from + row);
        restrict(all, reached, from, masonry.whole());
        for (int residue = 0; residue < shortfalls.residues(); residue++) {
            addWhole(reached, from, made, residue);
        }
        for (int kind = 0; kind < shortfalls.specials(); kind++) {
            restrict(all, reached, from, masonry.whole() - shortfalls.of(kind));
            for (int residue = 0; residue < shortfalls.residues(); residue++) {
                addSpecial(reached, from, made, residue, kind);
            }
        }
        for (int step = 0; step < shortfalls.cutSteps() && made < cuts; step++) {
            restrict(all, reached, from, masonry.cutMost() - step * shortfalls.step());
            addCuts(reached, from, made, step);
        }
        System.arraycopy(all, 0, reached, from, row);
    }

    private void restrict(long[] all, long[] reached, int from, long length) {
        long[] allowed = all.clone();
        pins.restrict(allowed, words, gauge, before, length);
        System.arraycopy(allowed, 0, reached, from, row);
    }

    /** Adds cut pieces so many steps shorter than the longest. */
    private void addCuts(long[] reached, int from, int made, int step) {
        int kind = shortfalls.specials();
        for (int residue = 0; residue < shortfalls.residues(); residue++) {
            int target = shortfalls.to(kind, residue);
            if (target != Shortfalls.NOWHERE) {
                BitRow.addShifted(moved, (made + 1) * row + target * words, reached, from + residue * words, low,
                        high, shortfalls.carried(kind, residue) + step);
            }
        }
    }

    private void addWhole(long[] reached, int from, int made, int residue) {
        int to = made * row + residue * words;
        for (int word = low; word <= high; word++) {
            long had = reached[from + residue * words + word];
            long raked = shape.isRaked() ? had & (begun[residue * words + word] | ended[residue * words + word]) : 0;
            moved[to + word] |= had & ~raked;
            moved[to + row + word] |= raked;
        }
    }

    private void addSpecial(long[] reached, int from, int made, int residue, int kind) {
        int target = shortfalls.to(kind, residue);
        if (target == Shortfalls.NOWHERE) {
            return;
        }
        int shift = shortfalls.carried(kind, residue);
        int to = made * row + target * words;
        if (!shape.isRaked()) {
            BitRow.addShifted(moved, to, reached, from + residue * words, low, high, shift);
            return;
        }
        long[] level = new long[words];
        long[] raked = new long[words];
        for (int word = 0; word < words; word++) {
            long had = reached[from + residue * words + word];
            level[word] = had & ~begun[residue * words + word];
            raked[word] = had & begun[residue * words + word];
        }
        BitRow.addShifted(moved, to + row, raked, 0, words, shift);
        Arrays.fill(raked, 0);
        BitRow.addShifted(raked, 0, level, 0, words, shift);
        for (int word = 0; word < words; word++) {
            moved[to + word] |= raked[word] & ~ended[target * words + word];
            moved[to + row + word] |= raked[word] & ended[target * words + word];
        }
    }

    private void addCut(long[] reached, int from, int made, int residue) {
        int kind = shortfalls.specials();
        int target = shortfalls.to(kind, residue);
        if (target == Shortfalls.NOWHERE) {
            return;
        }
        int steps = shortfalls.cutSteps();
        int least = Math.max(0, low - (steps >> 6) - 1);
        Arrays.fill(struck, least, high + 1, 0);
        BitRow.addShifted(struck, 0, reached, from + residue * words, least, high, shortfalls.carried(kind, residue));
        BitRow.spread(struck, 0, least, high, steps);
        int to = (made + 1) * row + target * words;
        for (int word = low; word <= high; word++) {
            moved[to + word] |= struck[word];
        }
    }
}
