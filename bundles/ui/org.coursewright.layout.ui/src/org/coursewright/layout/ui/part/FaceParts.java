package org.coursewright.layout.ui.part;

import java.util.function.Supplier;

import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartFactory;

/**
 * Makes the parts of a wall face.
 *
 * @param state what the editor shows beside the model
 * @param dragging told what is dragged
 */
public record FaceParts(Supplier<FaceState> state, FaceDragging dragging) implements EditPartFactory {

    @Override
    public EditPart createEditPart(EditPart context, Object model) {
        return model instanceof Wall wall
                ? new WallPart(wall, state)
                : new OpeningPart((Opening) model, state, dragging);
    }
}
