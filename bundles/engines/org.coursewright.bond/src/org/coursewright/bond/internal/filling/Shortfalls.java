package org.coursewright.bond.internal.filling;

import java.util.Arrays;
import java.util.List;

import org.coursewright.bond.internal.choice.BitRow;
import org.coursewright.bond.internal.run.Masonry;

/**
 * What the pieces of a masonry fall short of the whole unit: a whole unit nothing, a special always the same, a cut piece
 * anything on the cut step between its least and its most. Sums of shortfalls are told apart by what they leave on the
 * cut step, the residue, and how many steps they hold beside; there is one residue where unit and specials are multiples
 * of the step themselves.
 */
public final class Shortfalls {

    /** Units and specials that leave more residues than this are not all combined. */
    private static final int MOST_RESIDUES = 12;
    /** Cut steps finer than this share of a unit are thinned. */
    private static final int MOST_STEPS = 512;
    static final int NOWHERE = -1;

    private final long step;
    private final long[] residues = new long[MOST_RESIDUES];
    private int found = 1;
    private final long[] kinds;
    private final long cutLeast;
    private final int cutSteps;
    private boolean complete;
    private final Masonry masonry;
    private final int[][] to;
    private final int[][] carried;
    private final long specialMost;

    /** @param exact the masonry; where it has very many cut steps, a coarser one is looked at */
    public Shortfalls(Masonry exact) {
        masonry = exact.coarse(MOST_STEPS);
        complete = masonry.cutStep() == exact.cutStep();
        step = masonry.cutStep();
        cutLeast = masonry.whole() - masonry.cutMost();
        cutSteps = masonry.canCut() ? Math.toIntExact((masonry.cutMost() - masonry.cutLeast()) / step) + 1 : 0;
        List<Long> shorter = masonry.specials().stream().filter(special -> special < masonry.whole()).toList();
        kinds = new long[shorter.size() + (cutSteps > 0 ? 1 : 0)];
        for (int kind = 0; kind < shorter.size(); kind++) {
            kinds[kind] = masonry.whole() - shorter.get(kind);
        }
        specialMost = Arrays.stream(kinds).max().orElse(0);
        if (cutSteps > 0) {
            kinds[kinds.length - 1] = cutLeast;
        }
        to = new int[kinds.length][MOST_RESIDUES];
        carried = new int[kinds.length][MOST_RESIDUES];
        for (int residue = 0; residue < found; residue++) {
            for (int kind = 0; kind < kinds.length; kind++) {
                follow(residue, kind);
            }
        }
    }

    private void follow(int residue, int kind) {
        long sum = residues[residue] + kinds[kind];
        int target = residueOf(sum);
        if (target == NOWHERE && found < MOST_RESIDUES) {
            target = found;
            residues[found++] = sum % step;
        }
        complete &= target != NOWHERE;
        to[kind][residue] = target;
        carried[kind][residue] = Math.toIntExact(sum / step);
    }

    /** Whether all sums of shortfalls are told apart. */
    boolean isComplete() {
        return complete;
    }

    /** What is combined; its cut step is coarser than it need be if that is too fine. */
    public Masonry masonry() {
        return masonry;
    }

    int residues() {
        return found;
    }

    long residue(int index) {
        return residues[index];
    }

    /** @return index of the residue that a sum leaves, or {@link #NOWHERE} */
    int residueOf(long sum) {
        long rest = sum % step;
        for (int residue = 0; residue < found; residue++) {
            if (residues[residue] == rest) {
                return residue;
            }
        }
        return NOWHERE;
    }

    long step() {
        return step;
    }

    /** Number of specials shorter than the unit. */
    int specials() {
        return kinds.length - (cutSteps > 0 ? 1 : 0);
    }

    /** @return shortfall of the special, or for the last kind of the longest cut piece */
    long of(int kind) {
        return kinds[kind];
    }

    boolean canCut() {
        return cutSteps > 0;
    }

    /** Number of lengths a cut piece may have. */
    int cutSteps() {
        return cutSteps;
    }

    long cutMost() {
        return cutSteps > 0 ? cutLeast + (cutSteps - 1L) * step : 0;
    }

    /** The greatest shortfall of a special, 0 without specials. */
    long specialMost() {
        return specialMost;
    }

    /** By how much so many pieces fall short at most, no more than {@code cuts} of them cut to length. */
    long most(int pieces, int cuts) {
        long special = specialMost;
        long cut = Math.max(special, cutMost());
        return Math.min(cuts, pieces) * cut + Math.max(0, pieces - cuts) * special;
    }

    /**
     * Marks shortfalls whose multiple lies between two numbers, both excluded.
     *
     * @param set a bit for each, so many words for each residue
     */
    void mark(long[] set, int words, long times, long above, long below) {
        long part = step * times;
        for (int residue = 0; residue < residues(); residue++) {
            long rest = residue(residue) * times;
            BitRow.setRange(set, residue * words, words, Math.floorDiv(above - rest, part) + 1,
                    -Math.floorDiv(-(below - rest), part) - 1);
        }
    }

    /** The fewest cuts that make up the shortfall of a gauge, whatever its windows. */
    int leastCuts(Gauge gauge) {
        long bySpecials = gauge.pieces() * specialMost;
        long cut = cutMost();
        return gauge.shortfall() <= bySpecials || cut == 0
                ? 0
                : (int) ((gauge.shortfall() - bySpecials + cut - 1) / cut);
    }

    /** Residue after one more piece of the kind, or {@link #NOWHERE}. */
    int to(int kind, int residue) {
        return to[kind][residue];
    }

    /** Steps added by one more piece of the kind. */
    int carried(int kind, int residue) {
        return carried[kind][residue];
    }
}
