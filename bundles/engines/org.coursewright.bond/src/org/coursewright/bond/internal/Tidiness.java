package org.coursewright.bond.internal;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What is weighed once laps and cuts are settled: each term only where those before it are equal, and less of each is
 * better.
 *
 * @param blocks blocks used up by cutting, two pieces from one where the kerf allows
 * @param cutLengths different lengths of cut pieces
 * @param gauges different joints
 * @param uneven what all joints differ from the nominal, added up
 */
record Tidiness(long blocks, long cutLengths, long gauges, long uneven) implements Comparable<Tidiness> {

    private static final Comparator<Tidiness> ORDER = Comparator.comparingLong(Tidiness::blocks)
            .thenComparingLong(Tidiness::cutLengths).thenComparingLong(Tidiness::gauges)
            .thenComparingLong(Tidiness::uneven);

    @Override
    public int compareTo(Tidiness other) {
        return ORDER.compare(this, other);
    }

    /** Of runs laid with these patterns. */
    static Tidiness of(Masonry masonry, List<Pattern> patterns) {
        Tally tally = new Tally(masonry);
        patterns.forEach(pattern -> tally.add(pattern, 1));
        return tally.tidiness();
    }

    /** Counts that change as patterns come and go. */
    static final class Tally {
        private final Masonry masonry;
        private final TreeMap<Long, Integer> cuts = new TreeMap<>();
        private final Map<Gauge, Integer> gauges = new HashMap<>();
        private long uneven;

        /** A joint as a fraction in lowest terms. */
        private record Gauge(long total, long joints) {
        }

        Tally(Masonry masonry) {
            this.masonry = masonry;
        }

        /** @param times how often, negative where it goes */
        void add(Pattern pattern, int times) {
            for (int piece = 0; piece < pattern.pieces().length; piece++) {
                if (pattern.isCut(piece)) {
                    count(cuts, pattern.pieces()[piece], times);
                }
            }
            if (pattern.joints() > 0) {
                long common = common(pattern.jointTotal(), pattern.joints());
                count(gauges, new Gauge(pattern.jointTotal() / common, pattern.joints() / common), times);
                uneven += times * Math.abs(pattern.jointTotal() - masonry.nominal() * pattern.joints());
            }
        }

        private static <T> void count(Map<T, Integer> counts, T key, int times) {
            if (counts.merge(key, times, Integer::sum) == 0) {
                counts.remove(key);
            }
        }

        private static long common(long one, long other) {
            return other == 0 ? one : common(other, one % other);
        }

        /** The lengths of cut pieces, each once. */
        TreeSet<Long> cutLengths() {
            return new TreeSet<>(cuts.keySet());
        }

        Tidiness tidiness() {
            return new Tidiness(blocks(), cuts.size(), gauges.size(), uneven);
        }

        /** The longest piece goes with the shortest if both fit into one block, else it has one for itself. */
        private long blocks() {
            TreeMap<Long, Integer> left = new TreeMap<>(cuts);
            long blocks = 0;
            while (!left.isEmpty()) {
                long longest = left.lastKey();
                long shortest = left.firstKey();
                boolean pairs = masonry.fitsBeside(longest, shortest);
                int count = left.get(longest);
                int times = !pairs
                        ? count
                        : longest == shortest ? (count + 1) / 2 : Math.min(count, left.get(shortest));
                blocks += times;
                count(left, longest, longest == shortest && pairs ? -count : -times);
                if (pairs && longest != shortest) {
                    count(left, shortest, -times);
                }
            }
            return blocks;
        }
    }
}
