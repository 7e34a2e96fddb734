package org.coursewright.bond.internal.laying;

import java.util.Arrays;

import org.coursewright.bond.internal.run.Masonry;

/** How many pieces of which length are cut; changes as pieces come and go. */
final class CutTally {

    private final Masonry masonry;
    /** Ascending. */
    private long[] lengths = new long[8];
    private int[] counts = new int[8];
    private int size;

    CutTally(Masonry masonry) {
        this.masonry = masonry;
    }

    /** @param times how many come, negative where they go */
    void add(long length, int times) {
        int place = Arrays.binarySearch(lengths, 0, size, length);
        if (place < 0) {
            place = -place - 1;
            insert(place, length);
        }
        counts[place] += times;
        if (counts[place] == 0) {
            remove(place);
        }
    }

    private void insert(int place, long length) {
        if (size == lengths.length) {
            lengths = Arrays.copyOf(lengths, 2 * size);
            counts = Arrays.copyOf(counts, 2 * size);
        }
        System.arraycopy(lengths, place, lengths, place + 1, size - place);
        System.arraycopy(counts, place, counts, place + 1, size - place);
        lengths[place] = length;
        counts[place] = 0;
        size++;
    }

    private void remove(int place) {
        size--;
        System.arraycopy(lengths, place + 1, lengths, place, size - place);
        System.arraycopy(counts, place + 1, counts, place, size - place);
    }

    /** The lengths of cut pieces, each once, ascending. */
    long[] lengths() {
        return Arrays.copyOf(lengths, size);
    }

    /** How many different lengths there are. */
    int size() {
        return size;
    }

    /** Blocks used up: the longest piece goes with the shortest if both fit into one block, else it has one for itself. */
    long blocks() {
        int[] left = Arrays.copyOf(counts, size);
        long blocks = 0;
        int shortest = 0;
        int longest = size - 1;
        while (shortest < longest) {
            boolean pairs = masonry.fitsBeside(lengths[longest], lengths[shortest]);
            int times = pairs ? Math.min(left[longest], left[shortest]) : left[longest];
            blocks += times;
            left[longest] -= times;
            left[shortest] -= pairs ? times : 0;
            longest -= left[longest] == 0 ? 1 : 0;
            shortest += left[shortest] == 0 ? 1 : 0;
        }
        if (shortest > longest) {
            return blocks;
        }
        return blocks + (masonry.halves(lengths[longest]) ? (left[longest] + 1) / 2 : left[longest]);
    }
}
