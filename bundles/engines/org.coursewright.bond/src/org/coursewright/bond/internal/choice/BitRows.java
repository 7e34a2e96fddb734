package org.coursewright.bond.internal.choice;

/** Rows of bits, all equally long. */
final class BitRows {

    private final int words;
    private final long[] bits;

    BitRows(int rows, int columns) {
        words = columns + Long.SIZE - 1 >> 6;
        bits = new long[rows * words];
    }

    void set(int row, int column) {
        BitRow.set(bits, row * words, column);
    }

    /** Whether the one row has no bit that the other has not. */
    boolean isWithin(int few, int many) {
        for (int word = 0; word < words; word++) {
            if ((bits[few * words + word] & ~bits[many * words + word]) != 0) {
                return false;
            }
        }
        return true;
    }
}
