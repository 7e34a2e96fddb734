package org.coursewright.bond.internal.building;

import java.util.Comparator;

import org.coursewright.bond.WallLayout;

/**
 * What walls cost, as far as handing and dimensions are chosen by it: runs that nothing fills, then short laps, then cut pieces.
 *
 * @param unfillable runs that nothing fills
 * @param violations avoidable pairs of joints that lap too little
 * @param cuts cut pieces
 */
public record LayingCost(long unfillable, long violations, long cuts) implements Comparable<LayingCost> {

    /** Nothing laid, nothing spent. */
    public static final LayingCost NONE = new LayingCost(0, 0, 0);

    private static final Comparator<LayingCost> ORDER = Comparator.comparingLong(LayingCost::unfillable)
            .thenComparingLong(LayingCost::violations).thenComparingLong(LayingCost::cuts);

    private static final int CUTS = 14;
    private static final int VIOLATIONS = 34;
    private static final int UNFILLABLE = 48;

    /** @return what a layout costs */
    public static LayingCost of(WallLayout layout) {
        return new LayingCost(layout.unfillable().size(), layout.lapViolations(), layout.cutPieces());
    }

    /** @return the sum of both */
    public LayingCost plus(LayingCost other) {
        return new LayingCost(unfillable + other.unfillable, violations + other.violations, cuts + other.cuts);
    }

    /** As one number for {@code CostNetwork}; sums stay apart up to 16,384 violations and a million cuts. */
    long packed(int preference) {
        return (unfillable << UNFILLABLE) + (violations << VIOLATIONS) + (cuts << CUTS) + preference;
    }

    static LayingCost unpacked(long packed) {
        return new LayingCost(packed >> UNFILLABLE, packed >> VIOLATIONS & (1L << UNFILLABLE - VIOLATIONS) - 1,
                packed >> CUTS & (1L << VIOLATIONS - CUTS) - 1);
    }

    @Override
    public int compareTo(LayingCost other) {
        return ORDER.compare(this, other);
    }
}
