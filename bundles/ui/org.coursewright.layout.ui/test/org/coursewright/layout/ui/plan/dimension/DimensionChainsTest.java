package org.coursewright.layout.ui.plan.dimension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.coursewright.layout.ui.plan.PlanSample.at;

import java.util.List;

import org.coursewright.layout.ui.plan.PlanSample;
import org.coursewright.layout.ui.plan.dimension.Dimension.Kind;
import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Wall;
import org.junit.jupiter.api.Test;

class DimensionChainsTest {

    private final PlanSample sample = PlanSample.room();

    private List<Dimension> of(String mark) {
        return new DimensionChains(sample.shape()).of(sample.wall(mark));
    }

    private static Length inches(long count) {
        return Length.ofInches(count);
    }

    @Test
    void wallWithOpeningsIsMeasuredFromFaceToJambToFaceAndOverAll() {
        PlanSample.door(sample.wall("W1"), "D2", 120, 40);
        PlanSample.door(sample.wall("W1"), "D1", 30, 36);

        assertThat(of("W1")).extracting(Dimension::kind, Dimension::length, Dimension::row).containsExactly(
                tuple(Kind.TO_JAMB, inches(30), 0), tuple(Kind.WIDTH, inches(36), 0),
                tuple(Kind.TO_JAMB, inches(54), 0), tuple(Kind.WIDTH, inches(40), 0),
                tuple(Kind.FROM_JAMB, inches(50), 0), tuple(Kind.OVERALL, inches(210), 1));
    }

    @Test
    void plainWallIsMeasuredOverAllOnly() {
        assertThat(of("W2")).extracting(Dimension::kind, Dimension::length, Dimension::row)
                .containsExactly(tuple(Kind.OVERALL, inches(160), 0));
    }

    @Test
    void stringsAreOutsideTheBuildingWhicheverWayWallsWereDrawn() {
        Wall south = sample.wall("W1");
        south.setFromX(inches(200));
        south.setToX(Length.ZERO);

        Dimension overall = of("W1").get(0);

        assertThat(overall.away()).isEqualTo(Heading.NORTH.reversed());
        assertThat(overall.from()).isEqualTo(at(205, -5));
        assertThat(overall.to()).isEqualTo(at(-5, -5));
    }

    @Test
    void wallsInsideAreNotAmongThoseOutside() {
        Wall partition = sample.wall("P1", 80, 0, 80, 150);

        assertThat(new DimensionChains(sample.shape()).outside()).extracting(Dimension::wall)
                .doesNotContain(partition).contains(sample.wall("W1"));
    }

    @Test
    void wallInsideIsMeasuredBetweenTheFacesOfTheWallsItEndsAt() {
        sample.wall("P1", 80, 0, 80, 150);

        assertThat(of("P1")).extracting(Dimension::kind, Dimension::length)
                .contains(tuple(Kind.OVERALL, inches(140)));
    }

    @Test
    void faceIntoWhichAnotherWallRunsIsMeasuredOnEitherSideOfIt() {
        Wall partition = sample.wall("P1", 80, 0, 80, 150);
        sample.wall("P2", 80, 100, 200, 100);
        sample.wall("P3", 80, 50, 0, 50);

        List<Dimension> chain = of("P1");

        assertThat(chain).extracting(Dimension::kind).containsOnly(Kind.CLEAR);
        assertThat(chain).hasSize(2).allSatisfy(each -> assertThat(each.wall()).isEqualTo(partition));
        assertThat(chain.get(0).far()).contains(sample.wall("P2"));
        assertThat(chain).extracting(Dimension::length).containsExactly(inches(90), inches(40));
    }

    @Test
    void openingThatOverlapsTheOneBeforeIsNotMeasured() {
        PlanSample.door(sample.wall("W1"), "D1", 30, 36);
        PlanSample.door(sample.wall("W1"), "V1", 40, 10);

        assertThat(of("W1")).extracting(Dimension::kind).containsExactly(Kind.TO_JAMB, Kind.WIDTH, Kind.FROM_JAMB,
                Kind.OVERALL);
    }
}
