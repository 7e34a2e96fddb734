package org.coursewright.core.check;

import java.util.List;
import java.util.Objects;

import org.coursewright.bond.BondSolver;
import org.coursewright.core.bond.BuildingLayout;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Findings;
import org.coursewright.measure.Progress;
import org.coursewright.model.project.Project;

/** Checks a whole project: what contradicts itself, what cannot be built, and what somebody should look at. */
public final class ProjectCheck {

    private final BuildingLayout layout;

    /** @param solver the engine that tells whether walls can be laid, not null */
    public ProjectCheck(BondSolver solver) {
        this.layout = new BuildingLayout(Objects.requireNonNull(solver, "solver"));
    }

    /**
     * Checks a project.
     *
     * @param project the project, not null; it is not changed
     * @param progress hears how far the work is and may cancel it, not null
     * @return the findings, the gravest first; empty if all is well
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public List<Finding> check(Project project, Progress progress) {
        Findings findings = new Findings();
        findings.addAll(new MarkCheck(project).findings());
        findings.addAll(layout.lay(project, progress).findings());
        return findings.gravestFirst();
    }
}
