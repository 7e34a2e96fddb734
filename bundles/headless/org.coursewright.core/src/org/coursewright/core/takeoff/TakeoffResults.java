package org.coursewright.core.takeoff;

import java.util.List;

import org.coursewright.core.bond.LayoutResults;
import org.coursewright.core.derive.Derived;
import org.coursewright.core.derive.ModelRead;

/** The results about quantities, for a {@link org.coursewright.core.derive.DerivationGraph}. */
public final class TakeoffResults {

    private static final ModelRead<ProjectBrief> BRIEF = new ModelRead<>("take-off brief", ProjectBrief.class,
            ProjectBrief::of);

    /** The building measured, for what follows from its quantities. */
    public static final Derived<Measurement> MEASUREMENT = Derived.of("measurement", Measurement.class,
            List.of(BRIEF, LayoutResults.LAYOUT), (inputs, progress) -> Measurement.of(inputs.of(BRIEF),
                    inputs.of(LayoutResults.LAYOUT), progress));

    /** What the building takes. */
    public static final Derived<TakeoffOutcome> TAKEOFF = Derived.of("take-off", TakeoffOutcome.class, MEASUREMENT,
            (measurement, progress) -> ProjectTakeoff.of(measurement));

    private TakeoffResults() {
    }
}
