package org.coursewright.model.edit.command;

import org.coursewright.model.building.Bond;
import org.coursewright.model.building.BuildingPackage.Literals;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.ElementLabels;

/** Chooses which side of the unit lies along the wall, and with it the thickness of the wall. */
public final class ChangeBondCommand extends FeatureCommand {

    /**
     * @param wall of a project
     * @param bond stretcher or header
     */
    public ChangeBondCommand(Wall wall, Bond bond) {
        super(wall, ElementLabels.of(wall));
        set(Literals.WALL__BOND, bond);
    }
}
