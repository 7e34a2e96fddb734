package org.coursewright.takeoff.nesting;

import java.util.List;
import java.util.Objects;

import org.coursewright.measure.Length;
import org.coursewright.takeoff.Fraction;

/**
 * Which pieces are cut from which units. Every piece asked for is in it, and no other.
 *
 * @param stock what is cut
 * @param patterns how, with the most frequent first
 * @param units how many units are cut
 * @param relaxation bound from the linear relaxation: no plan takes fewer units than this
 * @param lowerBound whole units that every plan takes at least; equals {@code units} when proven
 * @param proven whether no plan takes fewer units
 */
public record CutPlan(CutStock stock, List<CutPattern> patterns, long units, Fraction relaxation, long lowerBound,
        boolean proven) {

    public CutPlan {
        Objects.requireNonNull(stock, "stock");
        patterns = List.copyOf(patterns);
        Objects.requireNonNull(relaxation, "relaxation");
    }

    /** @return all offcuts together, kerfs not counted */
    public Length offcuts() {
        return patterns.stream().map(pattern -> pattern.offcut(stock).times(pattern.units())).reduce(Length.ZERO,
                Length::plus);
    }
}
