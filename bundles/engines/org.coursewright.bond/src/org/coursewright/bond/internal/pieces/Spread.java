package org.coursewright.bond.internal.pieces;

/** Multiples of a step in a range, thinned to a bounded number that keeps both ends. */
public final class Spread {

    private Spread() {
    }

    static long firstMultiple(long from, long step) {
        return -Math.floorDiv(-from, step) * step;
    }

    /** The greatest multiple of {@code step} that is no more than {@code to}. */
    public static long lastMultiple(long to, long step) {
        return Math.floorDiv(to, step) * step;
    }

    /** All multiples of {@code step} in [{@code from}, {@code to}], or {@code most} of them evenly spread. */
    public static long[] multiples(long from, long to, long step, int most) {
        long first = firstMultiple(from, step);
        long last = lastMultiple(to, step);
        if (first > last) {
            return new long[0];
        }
        long count = (last - first) / step + 1;
        long[] multiples = new long[(int) Math.min(count, most)];
        for (int index = 0; index < multiples.length; index++) {
            long place = count <= most ? index : (count - 1) * index / (most - 1);
            multiples[index] = first + place * step;
        }
        return multiples;
    }
}
