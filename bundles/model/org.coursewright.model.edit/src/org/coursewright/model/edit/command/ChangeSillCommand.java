package org.coursewright.model.edit.command;

import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingPackage.Literals;
import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.ElementLabels;

/** Raises or lowers an opening. */
public final class ChangeSillCommand extends FeatureCommand {

    /**
     * @param opening of a project
     * @param sill above the wall's base, 0 or more
     */
    public ChangeSillCommand(Opening opening, Length sill) {
        super(opening, ElementLabels.of(opening));
        set(Literals.OPENING__SILL, sill);
    }
}
