package org.coursewright.core.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.core.PlanBuilder.in;

import java.util.List;

import org.coursewright.bond.Course;
import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CourseLinesTest {

    private static WallTop level(String length, String height) {
        return new WallTop(in(length),
                List.of(new WallTop.Point(Length.ZERO, in(height)), new WallTop.Point(in(length), in(height))));
    }

    /**
     * Modular vertical coursing, one bed joint with each unit: Brick Industry Association, Technical Note 10, vertical
     * coursing tables (from memory), and concrete masonry, one course 8 in (Navy course tables 8-2 and 8-3, from memory).
     * The joint of three modular courses in 8 in is no fraction of an inch, so the unit's share of the module is used.
     */
    @ParameterizedTest
    @CsvSource({"7 5/8, 3/8, 8, 1", "7 5/8, 3/8, 80, 10", "7 5/8, 3/8, 96, 12", "3 5/8, 3/8, 4, 1",
            "3 5/8, 3/8, 96, 24",
            "1 5/8, 3/8, 4, 2", "3 1/2, 1/2, 96, 24"})
    void modularHeightsAreWholeCourses(String unit, String bed, String height, int courses) {
        CourseLines lines = new CourseLines(in(unit).plus(in(bed)), Length.ZERO);

        assertThat(lines.isCourseLine(in(height))).isTrue();
        assertThat(lines.wholeCoursesBelow(in(height))).isEqualTo(courses);
    }

    @Test
    void heightOffTheCourseLinesHasOneBelowAndOneAbove() {
        CourseLines lines = new CourseLines(in("4 1/2"), Length.ZERO);

        assertThat(lines.isCourseLine(in("80"))).isFalse();
        assertThat(lines.lineBelow(in("80"))).isEqualTo(in("76 1/2"));
        assertThat(lines.lineAbove(in("80"))).isEqualTo(in("81"));
    }

    @Test
    void courseLineBelongsToTheCourseAboveOrBelowAsAsked() {
        CourseLines lines = new CourseLines(in("4 1/2"), Length.ZERO);

        assertThat(lines.courseAbove(in("9"))).isEqualTo(3);
        assertThat(lines.courseBelow(in("9"))).isEqualTo(2);
        assertThat(lines.courseAbove(in("10"))).isEqualTo(3);
        assertThat(lines.courseBelow(in("10"))).isEqualTo(3);
    }

    @Test
    void levelTopTakesWholeCoursesOnly() {
        CourseLines lines = new CourseLines(in("4 1/2"), Length.ZERO);

        List<Course> courses = lines.under(level("100", "20"), in("3"));

        assertThat(courses).hasSize(4);
        assertThat(courses.get(3).bottom()).isEqualTo(in("13 1/2"));
        assertThat(courses).allSatisfy(course -> assertThat(course.to()).isEqualTo(in("100")));
    }

    @Test
    void higherBaseBeginsOnAHigherCourseOfTheBuilding() {
        CourseLines lines = new CourseLines(in("4 1/2"), in("9"));

        List<Course> courses = lines.under(level("100", "9"), in("3"));

        assertThat(courses).extracting(Course::number).containsExactly(1, 2);
        assertThat(courses).extracting(Course::level).containsExactly(3, 4);
    }

    @Test
    void gableCoursesNarrowUntilTheShortestPieceNoLongerFits() {
        WallTop gable = new WallTop(in("120"), List.of(new WallTop.Point(in("0"), in("9")),
                new WallTop.Point(in("60"), in("39")), new WallTop.Point(in("120"), in("9"))));

        List<Course> courses = new CourseLines(in("4 1/2"), Length.ZERO).under(gable, in("3"));

        // Below the square top two courses, then a rise of 30 in: at 36 in the gable is still 12 in long.
        assertThat(courses).hasSize(9);
        assertThat(courses.get(1).topTo()).isEqualTo(in("120"));
        assertThat(courses.get(2).from()).isEqualTo(in("0"));
        assertThat(courses.get(2).topFrom()).isEqualTo(in("9"));
        assertThat(courses.get(8).from()).isEqualTo(in("54"));
        assertThat(courses.get(8).to()).isEqualTo(in("66"));
        assertThat(courses.get(8).topFrom()).isEqualTo(in("60"));
    }
}
