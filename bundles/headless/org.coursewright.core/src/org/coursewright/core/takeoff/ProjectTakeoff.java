package org.coursewright.core.takeoff;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.measure.Progress;
import org.coursewright.model.project.Project;

/** Takes off a building from its layout: the one call that screens, commands and sheets share. */
public final class ProjectTakeoff {

    private ProjectTakeoff() {
    }

    /**
     * Takes off all walls laid.
     *
     * @param project the project, not null; it is not changed
     * @param layout how that project is laid, not null
     * @param progress hears whether the result is still wanted, not null
     * @return what the building takes
     * @throws java.util.concurrent.CancellationException if it is no longer wanted
     */
    public static TakeoffOutcome of(Project project, LayoutOutcome layout, Progress progress) {
        return of(ProjectBrief.of(project), layout, progress);
    }

    /**
     * Takes off one wall as if it alone were built: its cut pieces are not nested with those of others.
     *
     * @param project the project, not null; it is not changed
     * @param layout how that project is laid, not null
     * @param mark the wall's mark, as in the layout
     * @param progress hears whether the result is still wanted, not null
     * @return what the wall takes
     * @throws IllegalArgumentException if the layout has no such wall
     * @throws java.util.concurrent.CancellationException if it is no longer wanted
     */
    public static TakeoffOutcome ofWall(Project project, LayoutOutcome layout, String mark, Progress progress) {
        if (layout.faces().stream().noneMatch(face -> face.mark().equals(mark))) {
            throw new IllegalArgumentException("The layout has no wall \"%s\".".formatted(mark));
        }
        return of(ProjectBrief.of(project).only(mark), layout, progress);
    }

    private static TakeoffOutcome of(ProjectBrief project, LayoutOutcome layout, Progress progress) {
        return of(Measurement.of(project, layout, progress));
    }

    static TakeoffOutcome of(Measurement measurement) {
        return TakeoffReport.of(measurement).outcome(measurement.assumptions(), measurement.findings());
    }
}
