package org.coursewright.exchange.sheet;

import java.nio.file.Path;
import java.util.List;

import org.coursewright.bond.BondSolver;
import org.coursewright.core.bond.BuildingLayout;
import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.Progress;
import org.coursewright.model.project.Project;

/** The walls of the demo building as sheets see them. */
public final class DemoSheets {

    private static final Path DEMO = Path.of("..", "..", "..", "releng", "demo", "clinic.coursewright");

    private DemoSheets() {
    }

    /** @return all walls, in inches */
    public static List<SheetWall> walls() throws ProjectFileException {
        Project project = new ProjectStore().load(DEMO);
        return SheetWalls.of(project, new BuildingLayout(BondSolver.standard()).lay(project, Progress.NONE));
    }

    /** @return the same wall, laid the same, on a sheet in millimetres */
    public static SheetWall inMillimetres(SheetWall wall) {
        return new SheetWall(wall.project(), wall.unit(), wall.bond(), wall.thickness(), wall.unitHeight(),
                wall.openings(), wall.top(), LengthFormat.MILLIMETRES, wall.face(), wall.layout());
    }
}
