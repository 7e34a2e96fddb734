package org.coursewright.core.takeoff;

import java.util.List;

import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.derive.Derived;
import org.coursewright.core.derive.ModelRead;

/** The results about quantities, for a {@link org.coursewright.core.derive.DerivationGraph}. */
public final class TakeoffResults {

    private static final ModelRead<ProjectBrief> BRIEF = new ModelRead<>("take-off brief", ProjectBrief.class,
            ProjectBrief::of);

    /** What the building takes. */
    public static final Derived<TakeoffOutcome> TAKEOFF = Derived.of("take-off", TakeoffOutcome.class,
            List.of(BRIEF, ProjectResults.LAYOUT), (inputs, progress) -> ProjectTakeoff.of(inputs.of(BRIEF),
                    inputs.of(ProjectResults.LAYOUT), progress));

    private TakeoffResults() {
    }
}
