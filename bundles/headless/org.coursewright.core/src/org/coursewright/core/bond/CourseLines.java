package org.coursewright.core.bond;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.Course;
import org.coursewright.measure.Length;

/**
 * The courses of one wall, all of the same height, counted from its base.
 *
 * @param courseHeight bed joint and unit together, greater than zero
 * @param base the wall's base above the project's benchmark
 */
record CourseLines(Length courseHeight, Length base) {

    /** @return how many whole courses fit below a height above the base */
    int wholeCoursesBelow(Length height) {
        return Math.toIntExact(Math.floorDiv(height.units(), courseHeight.units()));
    }

    /** @return number of the course that a height above the base lies in or, on a course line, of the course above it */
    int courseAbove(Length height) {
        return wholeCoursesBelow(height) + 1;
    }

    /** @return number of the course that a height above the base lies in or, on a course line, of the course below it */
    int courseBelow(Length height) {
        return Math.toIntExact(-Math.floorDiv(-height.units(), courseHeight.units()));
    }

    /** @return whether a height above the base is a course line */
    boolean isCourseLine(Length height) {
        return height.units() % courseHeight.units() == 0;
    }

    /** @return the course line below or at a height above the base */
    Length lineBelow(Length height) {
        return courseHeight.times(wholeCoursesBelow(height));
    }

    /** @return the course line above or at a height above the base */
    Length lineAbove(Length height) {
        return courseHeight.times(courseBelow(height));
    }

    /**
     * The courses under a top. Under a level top only whole courses count; under a rake the last course is the one that
     * still reaches the least piece at its bottom.
     */
    List<Course> under(WallTop top, Length leastPiece) {
        boolean level = top.points().stream().map(WallTop.Point::height).distinct().count() == 1;
        int last = level ? wholeCoursesBelow(top.highest()) : courseBelow(top.highest());
        List<Course> courses = new ArrayList<>();
        for (int number = 1; number <= last; number++) {
            Optional<Course> course = course(number, top, leastPiece);
            if (course.isEmpty()) {
                break;
            }
            courses.add(course.get());
        }
        return courses;
    }

    private Optional<Course> course(int number, WallTop top, Length leastPiece) {
        Length bottom = courseHeight.times(number - 1L);
        Optional<WallTop.Extent> below = top.at(bottom);
        if (below.isEmpty() || below.get().to().minus(below.get().from()).isLessThan(leastPiece)) {
            return Optional.empty();
        }
        WallTop.Extent at = below.get();
        WallTop.Extent above = top.at(bottom.plus(courseHeight)).orElseGet(() -> peak(top));
        return Optional.of(
                new Course(number, level(number), bottom, courseHeight, at.from(), at.to(), above.from(), above.to()));
    }

    /** Where a course ends in the peak, its top is the peak itself. */
    private static WallTop.Extent peak(WallTop top) {
        return top.at(top.highest()).orElseThrow();
    }

    /** Numbers courses through the building, so that walls that meet agree which of their courses are odd. */
    private int level(int number) {
        return Math.toIntExact(Math.floorDiv(base.units(), courseHeight.units())) + number;
    }
}
