package org.coursewright.bond.internal.laying;

import java.util.Arrays;

/** For patterns of one run, by number of violations: with which patterns of another run each has so many, or more. */
final class LapMarks {

    /** Two patterns with so many violations beyond the forced are no better than with more. */
    static final int MANY = 3;

    private final int patterns;
    private final int words;
    private final long[] bits;

    /** @param others how many patterns there are beside */
    LapMarks(int patterns, int others) {
        this(patterns, others + 63 >> 6, new long[patterns * MANY * (others + 63 >> 6)]);
    }

    private LapMarks(int patterns, int words, long[] bits) {
        this.patterns = patterns;
        this.words = words;
        this.bits = bits;
    }

    /** The same marks with room for more; these must not be used any longer. */
    LapMarks grown(int more, int others) {
        int wider = Math.max(words, others + 63 >> 6);
        if (more <= patterns && wider == words) {
            return this;
        }
        if (wider == words) {
            return new LapMarks(more, words, Arrays.copyOf(bits, more * MANY * words));
        }
        LapMarks grown = new LapMarks(more, wider, new long[more * MANY * wider]);
        for (int row = 0; row < patterns * MANY; row++) {
            System.arraycopy(bits, row * words, grown.bits, row * wider, words);
        }
        return grown;
    }

    void add(int pattern, int other, int violations) {
        int at = pattern * MANY * words + (other >> 6);
        long bit = 1L << other;
        for (int level = 0; level < violations; level++) {
            bits[at] |= bit;
            at += words;
        }
    }

    boolean isWithin(int few, int many) {
        int from = few * MANY * words;
        int to = many * MANY * words;
        for (int word = 0; word < MANY * words; word++) {
            if ((bits[from + word] & ~bits[to + word]) != 0) {
                return false;
            }
        }
        return true;
    }
}
