package org.coursewright.takeoff.quantities;

import java.util.List;
import java.util.Objects;

import org.coursewright.takeoff.Volume;

/**
 * What one wall takes.
 *
 * @param wall the wall as laid
 * @param courses from the bottom up
 * @param pieces all courses together
 * @param units volume of units, all courses together
 * @param mortar all courses together
 */
public record WallQuantities(LaidWall wall, List<CourseQuantities> courses, PieceTally pieces, Volume units,
        MortarVolumes mortar) {

    public WallQuantities {
        Objects.requireNonNull(wall, "wall");
        courses = List.copyOf(courses);
        Objects.requireNonNull(pieces, "pieces");
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(mortar, "mortar");
    }

    /** @return the volume of masonry: units, mortar and what is left open in joints */
    public Volume masonry() {
        return units.plus(mortar.net()).plus(mortar.open());
    }

    /** @return how many pieces are in courses lower than the unit */
    public long lowPieces() {
        long low = 0;
        for (int i = 0; i < courses.size(); i++) {
            if (wall.courses().get(i).height().isLessThan(wall.unit().height())) {
                low += courses.get(i).pieces().total();
            }
        }
        return low;
    }
}
