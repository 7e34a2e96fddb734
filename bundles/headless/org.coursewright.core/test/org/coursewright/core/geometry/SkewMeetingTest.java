package org.coursewright.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;

import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;

/**
 * Faces at any angle, compared with where straight lines cross: an independent calculation in floating point, without the
 * angle formulas of the code.
 */
class SkewMeetingTest {

    private static final double RADIUS = 4_000_000;
    private static final int CASES = 2_000;

    @Test
    void facesOfACornerMeetWhereTheirLinesCross() {
        Random random = new Random(34);
        for (int i = 0; i < CASES; i++) {
            double a = random.nextDouble(0, 360);
            double turn = random.nextDouble(50, 130) * (random.nextBoolean() ? 1 : -1);
            CentreLine own = ray("A", a, random.nextInt(4, 15));
            CentreLine met = ray("B", a + turn, random.nextInt(4, 15));
            WallNetwork network = WallNetwork.of(List.of(own, met));
            if (!network.meetingAt("A", Place.START).square()) {
                WallFaces faces = network.faces("A");
                double left = reach(own, 1, met, -1);
                double right = reach(own, -1, met, 1);
                assertThat(units(faces.left())).isCloseTo(units(faces.centreLine()) - left, within(2.0));
                assertThat(units(faces.right())).isCloseTo(units(faces.centreLine()) - right, within(2.0));
                assertThat(units(faces.startExtension())).isCloseTo(-(turn > 0 ? right : left), within(2.0));
            }
        }
    }

    @Test
    void facesOfAStemEndWhereTheyCrossTheNearFaceOfTheBar() {
        Random random = new Random(56);
        for (int i = 0; i < CASES; i++) {
            double a = random.nextDouble(0, 360);
            double turn = random.nextDouble(50, 130);
            CentreLine stem = ray("A", a, random.nextInt(4, 15));
            CentreLine half = ray("B", a + turn, random.nextInt(4, 15));
            CentreLine bar = new CentreLine("B", half.toX().negated(), half.toY().negated(), half.toX(), half.toY(),
                    half.thickness());
            WallNetwork network = WallNetwork.of(List.of(stem, bar));
            if (!network.meetingAt("A", Place.START).square()) {
                WallFaces faces = network.faces("A");
                assertThat(network.meetingAt("A", Place.START).kind()).isEqualTo(WallMeeting.Kind.TEE);
                assertThat(units(faces.left())).isCloseTo(units(faces.centreLine()) - reach(stem, 1, half, -1),
                        within(2.0));
                assertThat(units(faces.right())).isCloseTo(units(faces.centreLine()) - reach(stem, -1, half, -1),
                        within(2.0));
                assertThat(units(faces.startExtension())).isCloseTo(-reach(stem, 0, half, -1), within(2.0));
            }
        }
    }

    /** Walls that are nothing but joints: the answer hardly matters, but there has to be one. */
    @Test
    void wallsOfAMillimetreInAHeapAreNoTrouble() {
        Random random = new Random(78);
        for (int i = 0; i < CASES; i++) {
            Plan plan = new Plan();
            for (int n = 0; n < 8; n++) {
                long[] at = random.longs(4, 0, 600).map(units -> units - units % 30).toArray();
                plan.walls().add(new CentreLine("W" + n, Length.ofUnits(at[0]), Length.ofUnits(at[1]),
                        Length.ofUnits(at[2]), Length.ofUnits(at[3]), Length.ofUnits(random.nextInt(1, 90_000))));
            }
            WallNetwork network = plan.network();
            int walls = 8 - network.leftOut().size();
            assertThat(network.meetings().stream().flatMap(meeting -> meeting.ends().stream())
                    .filter(end -> end.place() != Place.ALONG)).hasSize(2 * walls);
        }
    }

    /** How far along {@code own} from its start its face on one side crosses a face of {@code met}; 1 is left. */
    private static double reach(CentreLine own, int ownSide, CentreLine met, int metSide) {
        double[] u = unit(own);
        double[] v = unit(met);
        double px = -u[1] * ownSide * units(own.thickness()) / 2 + v[1] * metSide * units(met.thickness()) / 2;
        double py = u[0] * ownSide * units(own.thickness()) / 2 - v[0] * metSide * units(met.thickness()) / 2;
        return -(px * v[1] - py * v[0]) / (u[0] * v[1] - u[1] * v[0]);
    }

    private static double[] unit(CentreLine line) {
        double x = units(line.toX()) - units(line.fromX());
        double y = units(line.toY()) - units(line.fromY());
        return new double[]{x / Math.hypot(x, y), y / Math.hypot(x, y)};
    }

    private static CentreLine ray(String mark, double degrees, int thickness) {
        return new CentreLine(mark, Length.ZERO, Length.ZERO,
                Length.ofUnits(Math.round(RADIUS * Math.cos(Math.toRadians(degrees)))),
                Length.ofUnits(Math.round(RADIUS * Math.sin(Math.toRadians(degrees)))), Length.ofInches(thickness));
    }

    private static double units(Length length) {
        return length.units();
    }
}
