package org.coursewright.takeoff.quantities;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.coursewright.measure.Length;

/**
 * A wall as laid, of one unit type and one unit thick.
 *
 * @param mark the wall's mark
 * @param unit what it is laid of; no course is higher than it
 * @param thickness the unit's width in stretcher bond, its length in header bond
 * @param courses from the bottom up
 */
public record LaidWall(String mark, UnitShape unit, Length thickness, List<LaidCourse> courses) {

    public LaidWall {
        Objects.requireNonNull(mark, "mark");
        courses = List.copyOf(courses);
        require(thickness.equals(unit.width()) || thickness.equals(unit.length()),
                "Wall %s is %s thick, but unit type %s measures %s × %s: a wall is as thick as its unit is wide or long.",
                mark, thickness, unit.type(), unit.length(), unit.width());
        Set<Integer> numbers = new HashSet<>();
        for (LaidCourse course : courses) {
            require(numbers.add(course.number()), "Wall %s has two courses %d: number them apart.", mark,
                    course.number());
            require(!course.height().isGreaterThan(unit.height()),
                    "Course %d of wall %s is %s high, more than unit type %s (%s): take a higher unit.",
                    course.number(), mark, course.height(), unit.type(), unit.height());
            course.runs().forEach(run -> requireWholeUnits(mark, course, run, face(unit, thickness)));
        }
    }

    private static void requireWholeUnits(String mark, LaidCourse course, LaidRun run, Length face) {
        for (LaidPiece piece : run.pieces()) {
            require(piece.kind() != LaidPiece.Kind.WHOLE || piece.length().equals(face),
                    "Course %d of wall %s has a whole unit of %s, but units are %s along that wall: lay it again.",
                    course.number(), mark, piece.length(), face);
        }
    }

    /** @return the unit's length along the wall: its length in stretcher bond, its width in header bond */
    public Length face() {
        return face(unit, thickness);
    }

    private static Length face(UnitShape unit, Length thickness) {
        return thickness.equals(unit.width()) ? unit.length() : unit.width();
    }

    /** @return the wall's mark and the number of a course, such as {@code W1/3} */
    public String element(int course) {
        return mark + "/" + course;
    }
}
