package org.coursewright.core.bond;

import java.util.Objects;

import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.bond.UnfillableRun;
import org.coursewright.bond.WallLayout;
import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.measure.Progress;
import org.coursewright.model.project.Project;

/** Lays a whole building: the one call that screens, commands and sheets share. */
public final class BuildingLayout {

    private final BondSolver solver;

    /** @param solver the engine to lay with, not null */
    public BuildingLayout(BondSolver solver) {
        this.solver = Objects.requireNonNull(solver, "solver");
    }

    /**
     * Lays every sound wall of a project. Walls that are not sound are told in the findings and left out.
     *
     * @param project the project, not null; it is not changed
     * @param progress hears how far the work is and may cancel it, not null
     * @return how the building is laid
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public LayoutOutcome lay(Project project, Progress progress) {
        return lay(BondTranslator.translate(project), progress);
    }

    /**
     * Lays what was read of a project before. Safe for use from any thread.
     *
     * @param translation what was read, not null
     * @param progress hears how far the work is and may cancel it, not null
     * @return how the building is laid
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public LayoutOutcome lay(Translation translation, Progress progress) {
        return outcome(translation, solver.solve(translation.request(), progress));
    }

    /**
     * Lays soon what was read of a project before: a first answer, as {@link BondSolver#first} gives it. Safe for use from
     * any thread.
     *
     * @param translation what was read, not null
     * @param progress hears how far the work is and may cancel it, not null
     * @return how the building is laid
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public LayoutOutcome first(Translation translation, Progress progress) {
        return outcome(translation, solver.first(translation.request(), progress));
    }

    private static LayoutOutcome outcome(Translation translation, BondResult result) {
        Findings findings = new Findings();
        findings.addAll(translation.findings());
        UnfillableWords words = new UnfillableWords(translation.format());
        result.walls().forEach(wall -> tell(wall, translation.references().get(wall.mark()), words, findings));
        StrayPins stray = new StrayPins(translation, findings);
        for (int wall = 0; wall < result.walls().size(); wall++) {
            stray.tell(translation.request().walls().get(wall), result.walls().get(wall));
        }
        return new LayoutOutcome(translation.request(), result, UnitCount.of(result.walls().stream()),
                findings.gravestFirst());
    }

    private static void tell(WallLayout wall, ElementReference element, UnfillableWords words, Findings findings) {
        for (UnfillableRun run : wall.unfillable()) {
            findings.error("lay.unfillable", element.at("course " + run.course()), words.of(run));
        }
        if (wall.lapViolations() > 0) {
            findings.warning("lay.lap", element,
                    "Pairs of joints that lap less than the least lap: %d.".formatted(wall.lapViolations()));
        }
    }
}
