package org.coursewright.model.edit.command;

import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingPackage.Literals;
import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.ElementLabels;

/** Sets how far the builder may propose to move and to resize an opening. */
public final class SetTolerancesCommand extends FeatureCommand {

    /**
     * @param opening of a project
     * @param move either way, 0 or more
     * @param size wider or narrower, 0 or more
     */
    public SetTolerancesCommand(Opening opening, Length move, Length size) {
        super(opening, ElementLabels.of(opening));
        set(Literals.OPENING__MOVE_TOLERANCE, move);
        set(Literals.OPENING__SIZE_TOLERANCE, size);
    }
}
