package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.mm;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heights of courses against published coursing. */
class VerticalCoursingTest {

    private static final BedRule EARTH_BLOCK = new BedRule(in("3 1/2"), in("3/8"), in("1/2"), in("5/8"));

    private static VerticalCoursing course(BedRule rule, Length... heights) {
        List<LevelMark> marks = new ArrayList<>();
        for (Length height : heights) {
            marks.add(new LevelMark("mark " + marks.size(), height));
        }
        return VerticalCoursing.of(rule, Length.ZERO, marks);
    }

    /**
     * Vertical coursing of BIA Technical Note 10 (values from memory): modular 3 courses in 8 in, engineer modular 5 in 16
     * in, economy 1 in 4 in, roman 2 in 4 in; concrete masonry 1 in 8 in, 12 in 8 ft.
     */
    @ParameterizedTest
    @CsvSource({"2 1/4, 8, 3", "2 1/4, 96, 36", "2 13/16, 16, 5", "3 5/8, 4, 1", "1 5/8, 4, 2", "7 5/8, 8, 1",
            "7 5/8, 96, 12"})
    void publishedCoursesReachPublishedHeights(String unit, String height, int courses) {
        VerticalCoursing coursing = course(new BedRule(in(unit), in("3/8"), in("3/8"), in("1/2")), in(height));

        assertThat(coursing.missed()).isEmpty();
        assertThat(coursing.lifts()).singleElement().extracting(Lift::courses).isEqualTo(courses);
    }

    /** 24 courses of 3 1/2 in blocks in 96 in leave 1/2 in for each bed joint. */
    @Test
    void bedJointIsWhatTheUnitsLeave() {
        Lift lift = course(EARTH_BLOCK, in("96")).lifts().get(0);

        assertThat(lift.courses()).isEqualTo(24);
        assertThat(lift.bed().toMillimetres()).isEqualTo(new BigDecimal("12.7"));
    }

    /** Three courses in 8 in: lines at 2 2/3, 5 1/3 and 8 in, marked to the nearest 1/16 in or 1 mm. */
    @Test
    void storyPoleIsMarkedFromExactHeights() {
        List<CourseLine> pole = course(new BedRule(in("2 1/4"), in("3/8"), in("3/8"), in("1/2")), in("8")).storyPole();

        assertThat(pole).extracting(line -> line.marked(in("1/16"))).containsExactly(in("2 11/16"), in("5 5/16"),
                in("8"));
        assertThat(pole).extracting(line -> line.marked(mm(1))).containsExactly(mm(68), mm(135), mm(203));
    }

    /** Gauges change between sill and head so that both are met: 36 in are 9 courses, 43 in more are 11 of 3 10/11 in. */
    @Test
    void everyLiftHasItsOwnGauge() {
        VerticalCoursing coursing = course(EARTH_BLOCK, in("79"), in("36"));

        assertThat(coursing.missed()).isEmpty();
        assertThat(coursing.lifts()).extracting(Lift::courses).containsExactly(9, 11);
        assertThat(coursing.lifts().get(1).bed().total()).isEqualTo(in("43").minus(in("38 1/2")));
    }

    @Test
    void missedHeightNamesTheNearestThatAreMet() {
        BedRule rigid = new BedRule(in("3 1/2"), in("1/2"), in("1/2"), in("1/2"));
        VerticalCoursing coursing = course(rigid, in("41"), in("96"));

        assertThat(coursing.lifts()).singleElement().extracting(Lift::to).isEqualTo(in("96"));
        assertThat(coursing.missed()).singleElement().satisfies(missed -> {
            assertThat(missed.below()).contains(in("40"));
            assertThat(missed.above()).contains(in("44"));
        });
    }

    @Test
    void heightBelowOneCourseHasNoNearestBelow() {
        MissedMark missed = course(EARTH_BLOCK, in("3")).missed().get(0);

        assertThat(missed.below()).isEmpty();
        assertThat(missed.above()).contains(in("3 7/8"));
    }

    @Test
    void marksAtTheSameHeightShareACourseLine() {
        VerticalCoursing coursing = course(EARTH_BLOCK, in("40"), in("40"));

        assertThat(coursing.missed()).isEmpty();
        assertThat(coursing.lifts()).hasSize(1);
    }

    @Test
    void markBelowTheBaseAndJointsOutOfOrderAreRefused() {
        assertThatThrownBy(() -> course(EARTH_BLOCK, in("0"))).isInstanceOf(InvalidBondRequestException.class)
                .hasMessageContaining("mark 0").hasMessageContaining("0 mm");
        assertThatThrownBy(() -> new BedRule(in("3 1/2"), in("1/2"), in("3/8"), in("5/8")))
                .isInstanceOf(InvalidBondRequestException.class).hasMessageContaining("12.7 mm, 9.525 mm, 15.875 mm");
    }

    /** Against every subset of marks: no choice meets more of them. */
    @Test
    void noOtherChoiceMeetsMoreMarks() {
        Random random = new Random(7);
        BedRule rule = new BedRule(in("3 1/2"), in("7/16"), in("1/2"), in("9/16"));
        for (int index = 0; index < 200; index++) {
            Length[] heights = new Length[5];
            for (int mark = 0; mark < heights.length; mark++) {
                heights[mark] = in("1/4").times(10 + random.nextInt(120));
            }
            VerticalCoursing coursing = course(rule, heights);
            assertThat(coursing.missed()).hasSize(heights.length - mostMet(rule, heights));
            coursing.lifts().forEach(lift -> {
                assertThat(lift.bed().isWithin(rule.least(), rule.most())).isTrue();
                assertThat(lift.from().plus(rule.unitHeight().times(lift.courses())).plus(lift.bed().total()))
                        .isEqualTo(lift.to());
            });
        }
    }

    private static int mostMet(BedRule rule, Length[] heights) {
        java.util.Arrays.sort(heights);
        int most = 0;
        for (int subset = 0; subset < 1 << heights.length; subset++) {
            Length at = Length.ZERO;
            boolean met = true;
            for (int mark = 0; mark < heights.length; mark++) {
                if ((subset >> mark & 1) == 1 && !heights[mark].equals(at)) {
                    met &= reaches(rule, heights[mark].minus(at).units());
                    at = heights[mark];
                }
            }
            most = met ? Math.max(most, Integer.bitCount(subset)) : most;
        }
        return most;
    }

    private static boolean reaches(BedRule rule, long rise) {
        for (int courses = 1; courses < 100; courses++) {
            long bed = rise - courses * rule.unitHeight().units();
            if (bed >= courses * rule.least().units() && bed <= courses * rule.most().units()) {
                return true;
            }
        }
        return false;
    }
}
