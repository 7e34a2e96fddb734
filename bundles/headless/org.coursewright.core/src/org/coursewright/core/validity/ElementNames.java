package org.coursewright.core.validity;

import java.util.List;
import java.util.stream.Collectors;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Marked;

/** How findings name the elements that they are about. */
public final class ElementNames {

    private ElementNames() {
    }

    /** @return a reference to a wall */
    public static ElementReference of(Wall wall) {
        return ElementReference.of(wall, "wall " + mark(wall));
    }

    /** @return a reference to an opening of a wall */
    public static ElementReference of(Opening opening, Wall wall) {
        return ElementReference.of(opening, "opening " + mark(opening) + " in wall " + mark(wall));
    }

    /** @return a reference to a unit type */
    public static ElementReference of(UnitType unit) {
        return ElementReference.of(unit, "unit " + mark(unit));
    }

    /**
     * @param meant the wall to which the reference leads
     * @param walls all that are named, at least one
     * @return a reference that names several walls
     */
    public static ElementReference of(Wall meant, List<Wall> walls) {
        return ElementReference.of(meant,
                "walls " + walls.stream().map(ElementNames::mark).collect(Collectors.joining(" and ")));
    }

    private static String mark(Marked element) {
        return element.getMark() == null || element.getMark().isBlank() ? "(without a mark)" : element.getMark();
    }
}
