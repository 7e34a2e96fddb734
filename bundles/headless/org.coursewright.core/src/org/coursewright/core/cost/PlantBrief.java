package org.coursewright.core.cost;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Quantity;
import org.coursewright.takeoff.Fraction;

/**
 * A machine, copied out of the project.
 *
 * @param mark its mark
 * @param output in an hour, or empty if it keeps pace with the crew
 * @param lost share of its hours
 */
record PlantBrief(String mark, Optional<Quantity> output, Fraction lost) {

    PlantBrief {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(output, "output");
        Objects.requireNonNull(lost, "lost");
    }
}
