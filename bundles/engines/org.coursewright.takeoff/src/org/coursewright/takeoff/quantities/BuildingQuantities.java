package org.coursewright.takeoff.quantities;

import java.util.List;

/**
 * What all walls take together.
 *
 * @param walls wall by wall, in the order given
 * @param units orders of units by type and bond, in order of first use
 * @param mortars orders of mortar by mix, in order of first use
 */
public record BuildingQuantities(List<WallQuantities> walls, List<UnitOrder> units, List<MortarOrder> mortars) {

    public BuildingQuantities {
        walls = List.copyOf(walls);
        units = List.copyOf(units);
        mortars = List.copyOf(mortars);
    }
}
