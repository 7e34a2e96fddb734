package org.coursewright.bond.internal.laying;

import java.util.Comparator;
import java.util.List;

import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;

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
        private final CutTally cuts;
        private final GaugeTally gauges = new GaugeTally();
        private long uneven;

        Tally(Masonry masonry) {
            this.masonry = masonry;
            cuts = new CutTally(masonry);
        }

        /** @param times how often, negative where it goes */
        void add(Pattern pattern, int times) {
            for (int piece = 0; piece < pattern.pieces().length; piece++) {
                if (pattern.isCut(piece)) {
                    cuts.add(pattern.pieces()[piece], times);
                }
            }
            if (pattern.joints() > 0) {
                gauges.add(pattern.jointTotal(), pattern.joints(), times);
                uneven += times * Math.abs(pattern.jointTotal() - masonry.nominal() * pattern.joints());
            }
        }

        /** The lengths of cut pieces, each once, ascending. */
        long[] cutLengths() {
            return cuts.lengths();
        }

        Tidiness tidiness() {
            return new Tidiness(cuts.blocks(), cuts.size(), gauges.size(), uneven);
        }
    }
}
