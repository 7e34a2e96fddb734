package org.coursewright.bond.advice;

import java.util.List;
import java.util.Objects;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.measure.Length;

/**
 * What may be changed, and what comes of it.
 *
 * @param before the building as planned, laid
 * @param proposals changes that together spare most within the budget, in the order to make them; none if none spares any
 * @param changed the building with all of them made
 * @param after that building, laid
 * @param profiles of every dimension that may change, in the order of the request, those of walls that may move last
 */
public record Advice(BondResult before, List<Proposal> proposals, BondRequest changed, BondResult after,
        List<DimensionProfile> profiles) {

    public Advice {
        Objects.requireNonNull(before, "before");
        proposals = List.copyOf(proposals);
        Objects.requireNonNull(changed, "changed");
        Objects.requireNonNull(after, "after");
        profiles = List.copyOf(profiles);
    }

    /** @return all changes together, each counted as a distance */
    public Length movement() {
        return proposals.stream().map(Proposal::movement).reduce(Length.ZERO, Length::plus);
    }
}
