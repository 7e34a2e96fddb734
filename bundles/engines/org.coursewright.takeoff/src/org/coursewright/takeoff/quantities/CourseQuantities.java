package org.coursewright.takeoff.quantities;

import java.util.Objects;

import org.coursewright.takeoff.Volume;

/**
 * What one course takes.
 *
 * @param course its number
 * @param pieces its pieces, counted
 * @param units the volume of its pieces
 * @param mortar its mortar, the bed joint under it included
 */
public record CourseQuantities(int course, PieceTally pieces, Volume units, MortarVolumes mortar) {

    public CourseQuantities {
        Objects.requireNonNull(pieces, "pieces");
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(mortar, "mortar");
    }

    /** @return the volume of masonry: units, mortar and what is left open in joints */
    public Volume masonry() {
        return units.plus(mortar.net()).plus(mortar.open());
    }
}
