package org.coursewright.layout.ui.plan.part;

import java.util.function.Supplier;

import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartFactory;

/**
 * Makes the parts of a plan.
 *
 * @param state what the editor shows beside the model
 */
public record PlanParts(Supplier<PlanState> state) implements EditPartFactory {

    @Override
    public EditPart createEditPart(EditPart context, Object model) {
        if (model instanceof Storey storey) {
            return new StoreyPart(storey, state);
        }
        if (model instanceof Wall wall) {
            return new PlanWallPart(wall);
        }
        return model instanceof Opening opening
                ? new PlanOpeningPart(opening)
                : new DimensionPart((DimensionKey) model);
    }
}
