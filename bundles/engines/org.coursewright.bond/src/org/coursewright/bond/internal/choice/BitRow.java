package org.coursewright.bond.internal.choice;

/** Sets of small numbers as bits in some words of an array, sixty-four to a word. */
public final class BitRow {

    private BitRow() {
    }

    /** Whether a bit of the row that begins at word {@code offset} is set. */
    public static boolean get(long[] bits, int offset, int bit) {
        return (bits[offset + (bit >> 6)] >>> bit & 1) != 0;
    }

    /** Sets a bit of the row that begins at word {@code offset}. */
    public static void set(long[] bits, int offset, int bit) {
        bits[offset + (bit >> 6)] |= 1L << bit;
    }

    /** Sets the bits {@code from} to {@code to}, both included, as far as there are any. */
    public static void setRange(long[] bits, int offset, int words, long from, long to) {
        int first = (int) Math.max(from, 0);
        int last = (int) Math.min(to, words * 64L - 1);
        for (int word = first >> 6; first <= last && word <= last >> 6; word++) {
            long mask = word == first >> 6 ? -1L << first : -1L;
            bits[offset + word] |= word == last >> 6 ? mask & -1L >>> 63 - (last & 63) : mask;
        }
    }

    /** Whether no bit of the row is set. */
    public static boolean isEmpty(long[] bits, int offset, int words) {
        for (int word = 0; word < words; word++) {
            if (bits[offset + word] != 0) {
                return false;
            }
        }
        return true;
    }

    /** The numbers of one word, greater by {@code shift}; numbers too great are dropped. */
    public static long shifted(long bits, int shift) {
        return shift < Long.SIZE ? bits << shift : 0;
    }

    /** The numbers of one word and the {@code steps - 1} numbers after each. */
    public static long spread(long bits, int steps) {
        long all = bits;
        int width = 1;
        for (; width * 2 <= steps && width < Long.SIZE; width *= 2) {
            all |= shifted(all, width);
        }
        return all | shifted(all, Math.max(0, steps - width));
    }

    /** Adds every number of the source, greater by {@code shift}, to the target; numbers too great for it are dropped. */
    public static void addShifted(long[] target, int to, long[] source, int from, int words, int shift) {
        addShifted(target, to, source, from, 0, words - 1, shift);
    }

    /** The same for the words {@code low} to {@code high} of the target, both included. */
    public static void addShifted(long[] target, int to, long[] source, int from, int low, int high, int shift) {
        int skip = shift >> 6;
        int left = shift & 63;
        for (int word = high; word >= Math.max(low, skip); word--) {
            long value = source[from + word - skip] << left;
            if (left > 0 && word > skip) {
                value |= source[from + word - skip - 1] >>> 64 - left;
            }
            target[to + word] |= value;
        }
    }

    /** Adds to every number in the words {@code low} to {@code high} the {@code steps - 1} numbers after it. */
    public static void spread(long[] bits, int offset, int low, int high, int steps) {
        int width = 1;
        while (width * 2 <= steps) {
            addShifted(bits, offset, bits, offset, low, high, width);
            width *= 2;
        }
        if (width < steps) {
            addShifted(bits, offset, bits, offset, low, high, steps - width);
        }
    }
}
