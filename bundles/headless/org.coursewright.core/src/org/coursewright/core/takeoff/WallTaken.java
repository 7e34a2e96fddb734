package org.coursewright.core.takeoff;

import java.util.List;
import java.util.Objects;

import org.coursewright.core.bond.UnitCount;

/**
 * What one wall takes.
 *
 * @param mark the wall's mark
 * @param unit mark of its unit type
 * @param bond {@code stretcher} or {@code header}
 * @param pieces as laid
 * @param face net area of one face
 * @param courses mortar course by course, from the bottom up
 */
public record WallTaken(String mark, String unit, String bond, UnitCount pieces, TakeoffLine face,
        List<CourseMortar> courses) {

    public WallTaken {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(bond, "bond");
        Objects.requireNonNull(pieces, "pieces");
        Objects.requireNonNull(face, "face");
        courses = List.copyOf(courses);
    }
}
