package org.coursewright.exchange.sheet;

import java.nio.file.Path;
import java.util.List;

import org.coursewright.bond.BondSolver;
import org.coursewright.core.bond.BuildingLayout;
import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Progress;
import org.coursewright.model.project.Project;

/** The walls of the demo building as sheets see them. */
public final class DemoSheets {

    private static final Path DEMO = Path.of("..", "..", "..", "releng", "demo", "clinic.coursewright");

    private DemoSheets() {
    }

    /** @return all walls, in inches */
    public static List<SheetWall> walls() throws ProjectFileException {
        return walls(DisplayUnit.INCH);
    }

    /** @return all walls, shown in a unit */
    public static List<SheetWall> walls(DisplayUnit unit) throws ProjectFileException {
        Project project = new ProjectStore().load(DEMO);
        project.setDisplayUnit(unit);
        return SheetWalls.of(project, new BuildingLayout(BondSolver.standard()).lay(project, Progress.NONE));
    }
}
