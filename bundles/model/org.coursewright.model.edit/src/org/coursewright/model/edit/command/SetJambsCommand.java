package org.coursewright.model.edit.command;

import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingPackage.Literals;
import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.ElementLabels;

/** Brings both jambs of an opening to other places of its wall. */
public final class SetJambsCommand extends FeatureCommand {

    /**
     * @param opening of a project
     * @param offset from the wall's outer start face to the near jamb, 0 or more
     * @param width between jambs, greater than 0
     */
    public SetJambsCommand(Opening opening, Length offset, Length width) {
        super(opening, ElementLabels.of(opening));
        set(Literals.OPENING__OFFSET, offset);
        set(Literals.OPENING__WIDTH, width);
    }
}
