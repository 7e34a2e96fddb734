package org.coursewright.bond.internal;

import org.coursewright.bond.WallLayout;

/**
 * What walls cost, as far as their handing is chosen by it: runs that nothing fills, then short laps, then cut pieces.
 *
 * @param unfillable runs that nothing fills
 * @param violations avoidable pairs of joints that lap too little
 * @param cuts cut pieces
 */
record HandingCost(long unfillable, long violations, long cuts) {

    static final HandingCost NONE = new HandingCost(0, 0, 0);

    private static final int CUTS = 14;
    private static final int VIOLATIONS = 34;
    private static final int UNFILLABLE = 48;

    static HandingCost of(WallLayout layout) {
        return new HandingCost(layout.unfillable().size(), layout.lapViolations(), layout.cutPieces());
    }

    HandingCost plus(HandingCost other) {
        return new HandingCost(unfillable + other.unfillable, violations + other.violations, cuts + other.cuts);
    }

    /** As one number for {@link CostNetwork}; sums stay apart up to 16,384 violations and a million cuts. */
    long packed(int preference) {
        return (unfillable << UNFILLABLE) + (violations << VIOLATIONS) + (cuts << CUTS) + preference;
    }

    static HandingCost unpacked(long packed) {
        return new HandingCost(packed >> UNFILLABLE, packed >> VIOLATIONS & (1L << UNFILLABLE - VIOLATIONS) - 1,
                packed >> CUTS & (1L << VIOLATIONS - CUTS) - 1);
    }
}
