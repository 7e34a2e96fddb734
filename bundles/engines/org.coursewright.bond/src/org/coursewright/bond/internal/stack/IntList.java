package org.coursewright.bond.internal.stack;

import java.util.Arrays;

/** A growing list of numbers. */
final class IntList {

    private int[] values = new int[64];
    private int size;

    void add(int value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
        }
        values[size++] = value;
    }

    int get(int index) {
        return values[index];
    }

    int removeLast() {
        return values[--size];
    }

    void clear() {
        size = 0;
    }

    int size() {
        return size;
    }

    boolean isEmpty() {
        return size == 0;
    }
}
