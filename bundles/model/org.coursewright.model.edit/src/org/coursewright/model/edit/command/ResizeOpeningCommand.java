package org.coursewright.model.edit.command;

import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingPackage.Literals;
import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.ElementLabels;

/** Makes an opening wider, narrower, higher or lower; its near jamb and its sill stay. */
public final class ResizeOpeningCommand extends FeatureCommand {

    /**
     * @param opening of a project
     * @param width between jambs, greater than 0
     * @param height from sill to head, greater than 0
     */
    public ResizeOpeningCommand(Opening opening, Length width, Length height) {
        super(opening, ElementLabels.of(opening));
        set(Literals.OPENING__WIDTH, width);
        set(Literals.OPENING__HEIGHT, height);
    }
}
