package org.coursewright.bond.internal.filling;

import java.util.Arrays;

import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunShape;

/**
 * Which shortfalls leave the joint after so many pieces clear of windows, by how many windows it meets. All joints of a
 * gauge are equal, so the shortfall of the pieces before a joint says where it lies.
 */
final class ClearShortfalls {

    private final RunShape shape;
    private final Masonry masonry;
    private final Shortfalls shortfalls;
    private Gauge nearest = new Gauge(1, 0, 0, 0);
    private Gauge furthest = nearest;
    private Windows.Grid windows = Windows.Grid.NONE;
    private int violations;
    private int words;
    /** Words of all residues together. */
    private int row;
    private long[] clear = new long[0];
    private long[] struck = new long[0];
    private int firstWindow;
    private int low;
    private int high;
    /** What one step more of shortfall moves a joint, times the number of joints. */
    private long unit;
    private double perUnit;

    ClearShortfalls(RunShape shape, Masonry masonry, Shortfalls shortfalls) {
        this.shape = shape;
        this.masonry = masonry;
        this.shortfalls = shortfalls;
    }

    /** Windows count where the joint lies in them with every gauge from the one with the least shortfall to the other. */
    void use(Gauge first, Gauge last, Windows.Grid keepingClear) {
        nearest = first;
        furthest = last;
        windows = keepingClear;
    }

    /** To be called before the joints of a run are asked about, from its start to its end. */
    void begin(int wordsOfResidue, int mostViolations) {
        words = wordsOfResidue;
        violations = mostViolations;
        row = words * shortfalls.residues();
        if (struck.length < row) {
            struck = new long[row];
        }
        if (clear.length < (violations + 1) * row) {
            clear = new long[(violations + 1) * row];
        }
        firstWindow = 0;
        unit = shortfalls.step() * nearest.joints();
        perUnit = 1.0 / unit;
    }

    /** One word of what was found: a row for each number of windows met, in it one for each residue. */
    long at(int word) {
        return clear[word];
    }

    /** Finds that there is no joint that might meet a window. */
    void all(int lowWord, int highWord) {
        low = lowWord;
        high = highWord;
        for (int set = 0; set < (violations + 1) * shortfalls.residues(); set++) {
            Arrays.fill(clear, set * words + low, set * words + high + 1, set < shortfalls.residues() ? -1L : 0);
        }
    }

    /** Finds them for the joint after so many pieces, in words {@code low} to {@code high} of each residue. */
    void find(int pieces, int lowWord, int highWord) {
        all(lowWord, highWord);
        long base = base(pieces, furthest);
        long reach = reach(pieces);
        long least = skip(pieces);
        for (int window = firstWindow; window < windows.lows().length
                && windows.lows()[window] < reach; window++) {
            if (windows.highs()[window] > least) {
                strike(base - windows.highs()[window], reach - windows.lows()[window]);
            }
        }
    }

    /** The same where all shortfalls are in one word and no window may be met. */
    long word(int pieces) {
        long[] lows = windows.lows();
        long[] highs = windows.highs();
        long base = base(pieces, furthest);
        long reach = reach(pieces);
        long least = skip(pieces);
        long allowed = -1L;
        for (int window = firstWindow; window < lows.length && lows[window] < reach; window++) {
            if (highs[window] > least) {
                long from = Math.max(0, whole(base - highs[window]) + 1);
                long to = Math.min(63, whole(reach - lows[window] - 1));
                allowed &= from > to ? -1L : ~(-1L << from & -1L >>> 63 - to);
            }
        }
        return allowed;
    }

    /** How many windows the joint after so many pieces with that shortfall meets. */
    int hits(int pieces, long shortfall) {
        long start = base(pieces, nearest) - shortfall * nearest.joints();
        int hits = 0;
        for (int window = 0; window < windows.lows().length; window++) {
            hits += start < windows.highs()[window] && start + nearest.jointTotal() > windows.lows()[window] ? 1 : 0;
        }
        return hits;
    }

    /** Where the joint after the pieces begins if none falls short, times the number of joints. */
    private long base(int pieces, Gauge gauge) {
        return pieces * masonry.whole() * Math.max(gauge.joints(), 1)
                + (pieces - 1L + shape.startJoints()) * gauge.jointTotal();
    }

    /** Where the joint after the pieces ends at the furthest. */
    private long reach(int pieces) {
        return base(pieces, nearest) + nearest.jointTotal();
    }

    /** Passes windows that no later joint can reach; says where this one begins at the nearest. */
    private long skip(int pieces) {
        long least = base(pieces, nearest) - furthest.shortfall() * nearest.joints();
        while (firstWindow < windows.lows().length && windows.highs()[firstWindow] <= least) {
            firstWindow++;
        }
        return least;
    }

    /** The quotient by the unit, rounded down: estimated, then made exact. */
    private long whole(long dividend) {
        long quotient = (long) (dividend * perUnit);
        long rest = dividend - quotient * unit;
        if (rest < 0) {
            return quotient - 1;
        }
        return rest >= unit ? quotient + 1 : quotient;
    }

    /** Strikes shortfalls whose product with the number of joints lies between two numbers, both excluded. */
    private void strike(long above, long below) {
        if (violations == 0 && shortfalls.residues() == 1) {
            clearRange(Math.floorDiv(above, unit) + 1, -Math.floorDiv(-below, unit) - 1);
            return;
        }
        Arrays.fill(struck, 0, row, 0);
        shortfalls.mark(struck, words, nearest.joints(), above, below);
        for (int met = violations; met >= 0; met--) {
            for (int word = 0; word < row; word++) {
                long fewer = met == 0 ? 0 : clear[(met - 1) * row + word] & struck[word];
                clear[met * row + word] = clear[met * row + word] & ~struck[word] | fewer;
            }
        }
    }

    private void clearRange(long from, long to) {
        int first = (int) Math.max(from, low * 64L);
        int last = (int) Math.min(to, high * 64L + 63);
        for (int word = first >> 6; first <= last && word <= last >> 6; word++) {
            long mask = word == first >> 6 ? -1L << first : -1L;
            clear[word] &= ~(word == last >> 6 ? mask & -1L >>> 63 - (last & 63) : mask);
        }
    }
}
