package org.coursewright.core.check;

import java.util.List;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.bond.LayoutResults;
import org.coursewright.core.cost.EstimateFindings;
import org.coursewright.core.derive.Derived;
import org.coursewright.core.derive.ModelRead;

/**
 * The results that follow from every project, for a {@link org.coursewright.core.derive.DerivationGraph}: what the screen
 * shows and what the commands print.
 */
public final class ProjectResults {

    private static final ModelRead<CheckReport> MARKS = new ModelRead<>("marks", CheckReport.class,
            project -> new CheckReport(new MarkCheck(project).findings()));

    /** How the building is laid. */
    public static final Derived<LayoutOutcome> LAYOUT = LayoutResults.LAYOUT;

    /** What is wrong or doubtful in the project. */
    public static final Derived<CheckReport> CHECK = Derived.of("check", CheckReport.class,
            List.of(MARKS, EstimateFindings.READ, LAYOUT),
            (inputs, progress) -> inputs.of(MARKS).and(inputs.of(EstimateFindings.READ).findings()).and(
                    inputs.of(LAYOUT).findings()));

    private ProjectResults() {
    }
}
