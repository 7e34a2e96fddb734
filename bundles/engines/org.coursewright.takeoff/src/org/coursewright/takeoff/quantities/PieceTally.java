package org.coursewright.takeoff.quantities;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

import org.coursewright.measure.Length;

/**
 * Pieces counted.
 *
 * @param whole whole units
 * @param specials specials by length
 * @param cuts pieces cut to length, by the length of unit they are cut from at least
 */
public record PieceTally(long whole, SortedMap<Length, Long> specials, SortedMap<Length, Long> cuts) {

    /** Nothing counted. */
    public static final PieceTally NONE = new PieceTally(0, new TreeMap<>(), new TreeMap<>());

    public PieceTally {
        specials = Collections.unmodifiableSortedMap(new TreeMap<>(specials));
        cuts = Collections.unmodifiableSortedMap(new TreeMap<>(cuts));
    }

    /** @return the pieces of a run */
    public static PieceTally of(LaidRun run) {
        long whole = 0;
        SortedMap<Length, Long> specials = new TreeMap<>();
        SortedMap<Length, Long> cuts = new TreeMap<>();
        for (LaidPiece piece : run.pieces()) {
            switch (piece.kind()) {
                case WHOLE -> whole++;
                case SPECIAL -> specials.merge(piece.length(), 1L, Long::sum);
                case CUT -> cuts.merge(piece.blank(), 1L, Long::sum);
            }
        }
        return new PieceTally(whole, specials, cuts);
    }

    /** @return both together */
    public PieceTally plus(PieceTally other) {
        return new PieceTally(whole + other.whole, sum(specials, other.specials), sum(cuts, other.cuts));
    }

    /** @return how many specials */
    public long specialCount() {
        return count(specials);
    }

    /** @return how many cut pieces */
    public long cutCount() {
        return count(cuts);
    }

    /** @return how many pieces in all */
    public long total() {
        return whole + specialCount() + cutCount();
    }

    private static long count(Map<Length, Long> pieces) {
        return pieces.values().stream().mapToLong(Long::longValue).sum();
    }

    private static SortedMap<Length, Long> sum(SortedMap<Length, Long> first, SortedMap<Length, Long> second) {
        if (second.isEmpty()) {
            return first;
        }
        SortedMap<Length, Long> sum = new TreeMap<>(first);
        second.forEach((length, count) -> sum.merge(length, count, Long::sum));
        return sum;
    }
}
