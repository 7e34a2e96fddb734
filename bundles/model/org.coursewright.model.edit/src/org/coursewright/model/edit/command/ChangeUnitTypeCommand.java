package org.coursewright.model.edit.command;

import org.coursewright.model.building.BuildingPackage.Literals;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.edit.ElementLabels;

/** Chooses what a wall is laid of. */
public final class ChangeUnitTypeCommand extends FeatureCommand {

    /**
     * @param wall of a project
     * @param unitType of the same project, or null for none
     */
    public ChangeUnitTypeCommand(Wall wall, UnitType unitType) {
        super(wall, ElementLabels.of(wall));
        set(Literals.WALL__UNIT_TYPE, unitType);
    }
}
