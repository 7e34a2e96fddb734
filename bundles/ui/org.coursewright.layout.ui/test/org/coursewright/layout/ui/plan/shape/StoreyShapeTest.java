package org.coursewright.layout.ui.plan.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.layout.ui.plan.PlanSample.at;

import java.util.List;
import java.util.Random;

import org.coursewright.core.geometry.WallMeeting.Kind;
import org.coursewright.layout.ui.plan.PlanSample;
import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;

class StoreyShapeTest {

    @Test
    void freeWallIsARectangleWithFourFaces() {
        PlanSample sample = new PlanSample();
        sample.wall("W1", 0, 0, 100, 0);

        WallShape wall = sample.shape("W1");

        assertThat(wall.outline()).containsExactly(at(0, 5), at(100, 5), at(100, -5), at(0, -5));
        assertThat(wall.edges()).containsExactlyInAnyOrder(new PlanEdge(at(0, 5), at(100, 5)),
                new PlanEdge(at(100, -5), at(0, -5)), new PlanEdge(at(0, 5), at(0, -5)),
                new PlanEdge(at(100, 5), at(100, -5)));
    }

    @Test
    void cornersAreMitredFromTheInnerToTheOuterCorner() {
        WallShape south = PlanSample.room().shape("W1");

        assertThat(south.outline()).containsExactly(at(5, 5), at(195, 5), at(205, -5), at(-5, -5));
        assertThat(south.edges()).hasSize(2);
        assertThat(south.length()).isEqualTo(Length.ofInches(210));
    }

    @Test
    void wallsOfARoomCoverItsRingOnceAndNothingElse() {
        List<WallShape> walls = List.copyOf(PlanSample.room().shape().walls().values());

        double covered = walls.stream().mapToDouble(wall -> area(wall.outline())).sum();

        assertThat(covered).isEqualTo(210.0 * 160 - 190 * 140);
    }

    @Test
    void teeStopsAtTheNearFaceAndInterruptsIt() {
        PlanSample sample = PlanSample.room();
        sample.wall("P1", 80, 0, 80, 150);

        assertThat(sample.shape("P1").outline()).containsExactly(at(75, 5), at(75, 145), at(85, 145), at(85, 5));
        assertThat(sample.shape("P1").edges()).hasSize(2);
        assertThat(sample.shape("W1").edges()).containsExactlyInAnyOrder(new PlanEdge(at(5, 5), at(75, 5)),
                new PlanEdge(at(85, 5), at(195, 5)), new PlanEdge(at(205, -5), at(-5, -5)));
        assertThat(sample.shape().meetings()).extracting(PlanMeeting::kind)
                .containsExactlyInAnyOrder(Kind.CORNER, Kind.CORNER, Kind.CORNER, Kind.CORNER, Kind.TEE, Kind.TEE);
    }

    @Test
    void openingsAreMeasuredFromTheOuterStartFace() {
        WallShape west = PlanSample.room().shape("W4");

        assertThat(west.part(Length.ofInches(20), Length.ofInches(30)))
                .containsExactly(at(5, 135), at(5, 105), at(-5, 105), at(-5, 135));
        assertThat(west.offset(at(0, 135))).isEqualTo(Length.ofInches(20));
    }

    @Test
    void skewCornerMeetsAtTheLineBetweenItsInnerAndOuterCorner() {
        PlanSample sample = new PlanSample();
        sample.wall("W1", 0, 0, 100, 0);
        sample.wall("W2", 0, 0, 100, 100);

        WallShape level = sample.shape("W1");
        WallShape slanted = sample.shape("W2");

        assertThat(level.outline().get(0)).isEqualTo(slanted.outline().get(3));
        assertThat(level.outline().get(3)).isEqualTo(slanted.outline().get(0));
    }

    @Test
    void tipOfAVerySharpCornerIsTakenOff() {
        PlanSample sample = new PlanSample();
        sample.wall("W1", 0, 0, 400, 0);
        sample.wall("W2", 0, 0, 400, 20);

        assertThat(sample.shape("W1").outline()).allSatisfy(
                point -> assertThat(point.x().isLessThan(Length.ofInches(-20))).isFalse());
    }

    @Test
    void turnedRoomsHaveTheSameLengthsOfFaces() {
        Random random = new Random(4711);
        for (int i = 0; i < 100; i++) {
            long a = 100 + random.nextInt(400);
            long b = 100 + random.nextInt(400);
            PlanSample sample = new PlanSample();
            sample.wall("W1", 0, 0, 3 * a, 4 * a);
            sample.wall("W2", 3 * a, 4 * a, 3 * a - 4 * b, 4 * a + 3 * b);

            WallShape wall = sample.shape("W1");

            assertThat(wall.outline().get(3).distance(wall.outline().get(2)).minus(wall.faces().right()).abs()
                    .units()).isLessThanOrEqualTo(2);
            assertThat(wall.outline().get(0).distance(wall.outline().get(1)).minus(wall.faces().left()).abs()
                    .units()).isLessThanOrEqualTo(2);
        }
    }

    /** Gauss's area formula, in square inches. */
    private static double area(List<PlanPoint> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            PlanPoint one = outline.get(i);
            PlanPoint next = outline.get((i + 1) % outline.size());
            twice += inches(one.x()) * inches(next.y()) - inches(next.x()) * inches(one.y());
        }
        return Math.abs(twice) / 2;
    }

    private static double inches(Length length) {
        return (double) length.units() / Length.UNITS_PER_INCH;
    }
}
