package org.coursewright.bond.internal.laying;

import java.util.Arrays;

/** How many runs are laid with which joint; changes as runs come and go. Few are different, so they stand in a row. */
final class GaugeTally {

    /** A joint is a total shared by so many, as a fraction. */
    private long[] totals = new long[8];
    private long[] joints = new long[8];
    private int[] counts = new int[8];
    private int size;

    /**
     * @param total width of all joints of the run together
     * @param shared how many joints share it, at least one
     * @param times how many such runs come, negative where they go
     */
    void add(long total, long shared, int times) {
        int place = 0;
        while (place < size && totals[place] * shared != total * joints[place]) {
            place++;
        }
        if (place == size) {
            append(total, shared);
        }
        counts[place] += times;
        if (counts[place] == 0) {
            size--;
            totals[place] = totals[size];
            joints[place] = joints[size];
            counts[place] = counts[size];
        }
    }

    private void append(long total, long shared) {
        if (size == counts.length) {
            totals = Arrays.copyOf(totals, 2 * size);
            joints = Arrays.copyOf(joints, 2 * size);
            counts = Arrays.copyOf(counts, 2 * size);
        }
        totals[size] = total;
        joints[size] = shared;
        counts[size++] = 0;
    }

    /** How many different joints there are. */
    int size() {
        return size;
    }
}
