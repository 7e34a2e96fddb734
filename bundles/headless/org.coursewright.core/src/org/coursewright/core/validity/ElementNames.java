package org.coursewright.core.validity;

import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Marked;

/** How findings name elements. */
public final class ElementNames {

    private ElementNames() {
    }

    public static String of(Wall wall) {
        return "wall " + mark(wall);
    }

    public static String of(Opening opening, Wall wall) {
        return "opening " + mark(opening) + " in wall " + mark(wall);
    }

    private static String mark(Marked element) {
        return element.getMark() == null || element.getMark().isBlank() ? "(without a mark)" : element.getMark();
    }
}
