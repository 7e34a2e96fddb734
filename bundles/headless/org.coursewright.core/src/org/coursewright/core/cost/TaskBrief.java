package org.coursewright.core.cost;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.model.estimate.WorkKind;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.labour.Crew;
import org.coursewright.takeoff.labour.HeightFactors;
import org.coursewright.takeoff.labour.LearningCurve;
import org.coursewright.takeoff.labour.Productivity;

/**
 * How one kind of work is done, copied out of the project.
 *
 * @param kind of work
 * @param crew who does it, if anybody
 * @param plant with which machine, if any
 * @param productivity of the crew, if it has one
 * @param heights how output changes with height
 * @param conditions by which output is multiplied
 * @param learning how the crew gets faster, if it does
 * @param range how far its hours may be off
 */
record TaskBrief(WorkKind kind, Optional<Crew> crew, Optional<PlantBrief> plant, Optional<Productivity> productivity,
        HeightFactors heights, Fraction conditions, Optional<LearningCurve> learning, RangeBrief range) {

    TaskBrief {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(crew, "crew");
        Objects.requireNonNull(plant, "plant");
        Objects.requireNonNull(productivity, "productivity");
    }
}
