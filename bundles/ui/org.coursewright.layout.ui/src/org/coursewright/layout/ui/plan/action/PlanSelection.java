package org.coursewright.layout.ui.plan.action;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;

import org.coursewright.diagram.ui.history.EditCommand;
import org.coursewright.layout.ui.handing.HandingMenu;
import org.coursewright.layout.ui.plan.part.DimensionPart;
import org.coursewright.layout.ui.plan.part.PlanOpeningPart;
import org.coursewright.layout.ui.plan.part.PlanState;
import org.coursewright.layout.ui.plan.part.PlanWallPart;
import org.coursewright.layout.ui.plan.part.StoreyPart;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.ProjectCommand;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartViewer;

/**
 * What is selected in a plan.
 *
 * @param viewer of the plan
 * @param say told what to say, and whether it is a refusal
 */
public record PlanSelection(EditPartViewer viewer, BiConsumer<String, Boolean> say) {

    /** @return the part of the storey, empty if none is shown */
    public Optional<StoreyPart> storey() {
        return viewer.getContents() instanceof StoreyPart part ? Optional.of(part) : Optional.empty();
    }

    /** @return what else is shown */
    public PlanState state() {
        return storey().orElseThrow().state();
    }

    /** @return the walls, in the order in which they were selected */
    public List<WallShape> walls() {
        List<WallShape> walls = new ArrayList<>();
        for (Object each : viewer.getSelectedEditParts()) {
            if (each instanceof PlanWallPart part) {
                part.shape().ifPresent(walls::add);
            }
        }
        return walls;
    }

    /** @return what can be decided about the corners of the one wall that is selected */
    public Optional<HandingMenu> handing() {
        List<WallShape> walls = walls();
        return walls.size() == 1
                ? state().laid().map(laid -> new HandingMenu(walls.get(0).wall(), laid, this::execute))
                : Optional.empty();
    }

    /** @return the openings and their walls, in the order in which they were selected */
    public Map<Opening, WallShape> openings() {
        Map<Opening, WallShape> openings = new LinkedHashMap<>();
        for (Object each : viewer.getSelectedEditParts()) {
            if (each instanceof PlanOpeningPart part) {
                part.wall().ifPresent(wall -> openings.put(part.element(), wall));
            }
        }
        return openings;
    }

    /** @return the one part that is selected */
    public Optional<EditPart> single() {
        return viewer.getSelectedEditParts().size() == 1
                ? Optional.of((EditPart) viewer.getSelectedEditParts().get(0))
                : Optional.empty();
    }

    /** @return the walls to be measured, those of selected openings too; empty while a dimension is selected */
    public Optional<Set<Wall>> measured() {
        Set<Wall> found = new LinkedHashSet<>();
        walls().forEach(wall -> found.add(wall.wall()));
        openings().values().forEach(wall -> found.add(wall.wall()));
        boolean keeps = found.isEmpty() && single().filter(DimensionPart.class::isInstance).isPresent();
        return keeps ? Optional.empty() : Optional.of(found);
    }

    /**
     * Makes an edit, or says why not.
     *
     * @param edit to be made
     */
    public void execute(ProjectCommand edit) {
        edit.refusal().ifPresent(refusal -> say.accept(refusal.reason(), true));
        viewer.getEditDomain().getCommandStack().execute(new EditCommand(edit));
    }
}
