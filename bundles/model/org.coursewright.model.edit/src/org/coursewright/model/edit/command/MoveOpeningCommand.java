package org.coursewright.model.edit.command;

import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingPackage.Literals;
import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.ElementLabels;

/** Moves an opening along its wall. */
public final class MoveOpeningCommand extends FeatureCommand {

    /**
     * @param opening of a project
     * @param offset from the wall's outer start face to the near jamb, 0 or more
     */
    public MoveOpeningCommand(Opening opening, Length offset) {
        super(opening, ElementLabels.of(opening));
        set(Literals.OPENING__OFFSET, offset);
    }
}
