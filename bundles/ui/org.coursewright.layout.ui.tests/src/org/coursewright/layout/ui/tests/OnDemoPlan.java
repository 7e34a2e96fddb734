package org.coursewright.layout.ui.tests;

import java.nio.file.Path;

import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.coursewright.layout.ui.plan.part.DimensionPart;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.commands.CommandStack;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** The plan of the demo building, open for the length of a test. */
abstract class OnDemoPlan {

    @TempDir
    Path folder;
    OpenPlan plan;

    @BeforeEach
    void openTheDemo() throws Exception {
        plan = OpenPlan.of(Demo.copyInto(folder));
    }

    @AfterEach
    void closeTheDemo() {
        OpenPlan.closeAll();
    }

    CommandStack history() {
        return plan.viewer().getEditDomain().getCommandStack();
    }

    DimensionPart dimension(String wall, Dimension.Kind kind) {
        return plan.dimensions().stream().filter(part -> part.dimension().orElseThrow().kind() == kind
                && part.dimension().orElseThrow().wall() == plan.wall(wall)).findFirst().orElseThrow();
    }

    void select(Object... models) {
        plan.viewer().deselectAll();
        for (Object model : models) {
            plan.viewer().appendSelection((EditPart) plan.viewer().getEditPartRegistry().get(model));
        }
        OpenPlan.settle();
    }
}
