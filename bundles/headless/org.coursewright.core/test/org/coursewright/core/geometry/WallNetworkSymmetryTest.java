package org.coursewright.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;

/** Moving, turning, mirroring and re-drawing a plan changes nothing but what it should. */
class WallNetworkSymmetryTest {

    private static final int PLANS = 100;

    @Test
    void movingAPlanMovesItsMeetingsAndNothingElse() {
        Length east = Length.ofUnits(123_456_789);
        Length north = Length.ofUnits(-98_765_432);
        forEachPlan(walls -> {
            WallNetwork still = WallNetwork.of(walls);
            WallNetwork moved = WallNetwork.of(each(walls, w -> line(w, w.fromX().plus(east), w.fromY().plus(north),
                    w.toX().plus(east), w.toY().plus(north))));
            assertThat(moved.meetings()).extracting(m -> List.of(m.x().minus(east), m.y().minus(north), m.ends(),
                    m.kind(), m.square(), m.degrees()))
                    .isEqualTo(still.meetings().stream()
                            .map(m -> List.of(m.x(), m.y(), m.ends(), m.kind(), m.square(), m.degrees())).toList());
            assertSameButPlace(still, moved);
        });
    }

    @Test
    void turningAPlanByAQuarterChangesNoLength() {
        forEachPlan(walls -> {
            WallNetwork still = WallNetwork.of(walls);
            WallNetwork turned = WallNetwork
                    .of(each(walls, w -> line(w, w.fromY().negated(), w.fromX(), w.toY().negated(), w.toX())));
            assertThat(turned.meetings()).extracting(m -> List.of(m.y(), m.x().negated(), m.ends(), m.kind()))
                    .isEqualTo(still.meetings().stream().map(m -> List.of(m.x(), m.y(), m.ends(), m.kind())).toList());
            assertSameButPlace(still, turned);
        });
    }

    @Test
    void mirroringAPlanSwapsLeftAndRight() {
        forEachPlan(walls -> {
            WallNetwork still = WallNetwork.of(walls);
            WallNetwork mirrored = WallNetwork
                    .of(each(walls, w -> line(w, w.fromX().negated(), w.fromY(), w.toX().negated(), w.toY())));
            for (CentreLine wall : walls) {
                WallFaces faces = still.faces(wall.mark());
                assertThat(mirrored.faces(wall.mark())).isEqualTo(new WallFaces(wall.mark(), faces.centreLine(),
                        faces.startExtension(), faces.endExtension(), faces.outer(), faces.right(), faces.left()));
            }
        });
    }

    @Test
    void drawingEveryWallTheOtherWaySwapsItsEndsAndSides() {
        forEachPlan(walls -> {
            WallNetwork still = WallNetwork.of(walls);
            WallNetwork swapped = WallNetwork
                    .of(each(walls, w -> line(w, w.toX(), w.toY(), w.fromX(), w.fromY())));
            for (CentreLine wall : walls) {
                WallFaces faces = still.faces(wall.mark());
                assertThat(swapped.faces(wall.mark())).isEqualTo(new WallFaces(wall.mark(), faces.centreLine(),
                        faces.endExtension(), faces.startExtension(), faces.outer(), faces.right(), faces.left()));
                assertThat(swapped.meetingAt(wall.mark(), Place.END).kind())
                        .isEqualTo(still.meetingAt(wall.mark(), Place.START).kind());
            }
            assertThat(swapped.crossings()).extracting(Crossing::kind, Crossing::first, Crossing::second)
                    .isEqualTo(still.crossings().stream()
                            .map(c -> tuple(c.kind(), c.first(), c.second())).toList());
            assertThat(swapped.nearMisses()).extracting(NearMiss::distance)
                    .containsExactlyInAnyOrderElementsOf(still.nearMisses().stream().map(NearMiss::distance).toList());
        });
    }

    @Test
    void everyEndIsInExactlyOneMeeting() {
        forEachPlan(walls -> {
            List<String> ends = WallNetwork.of(walls).meetings().stream().flatMap(m -> m.ends().stream())
                    .filter(end -> end.place() != Place.ALONG).map(end -> end.mark() + end.place()).toList();
            assertThat(ends).doesNotHaveDuplicates().hasSize(2 * walls.size());
        });
    }

    private static void assertSameButPlace(WallNetwork still, WallNetwork other) {
        still.meetings().stream().flatMap(m -> m.ends().stream()).map(MeetingEnd::mark).distinct()
                .forEach(mark -> assertThat(other.faces(mark)).isEqualTo(still.faces(mark)));
        assertThat(nearMisses(other)).isEqualTo(nearMisses(still));
        assertThat(crossings(other)).isEqualTo(crossings(still));
    }

    private static List<List<Object>> nearMisses(WallNetwork network) {
        return network.nearMisses().stream().map(miss -> List.<Object>of(miss.end(), miss.other(), miss.distance()))
                .toList();
    }

    private static List<List<Object>> crossings(WallNetwork network) {
        return network.crossings().stream()
                .map(crossing -> List.<Object>of(crossing.kind(), crossing.first(), crossing.second())).toList();
    }

    /** Plans of 3 to 14 walls between points of a coarse grid, one in four a few inches off. */
    private static void forEachPlan(Consumer<List<CentreLine>> check) {
        Random random = new Random(90);
        for (int i = 0; i < PLANS; i++) {
            int count = random.nextInt(3, 15);
            Plan plan = new Plan();
            for (int n = 0; plan.walls().size() < count; n++) {
                long[] at = random.longs(4, 0, 5).map(grid -> grid * 60).toArray();
                at[0] += random.nextInt(4) == 0 ? random.nextInt(-9, 10) : 0;
                if (at[0] != at[2] || at[1] != at[3]) {
                    plan.wall("W" + n, at[0], at[1], at[2], at[3], 4 + 2 * random.nextInt(6));
                }
            }
            check.accept(plan.walls());
        }
    }

    private static List<CentreLine> each(List<CentreLine> walls, UnaryOperator<CentreLine> change) {
        return new ArrayList<>(walls.stream().map(change).toList());
    }

    private static CentreLine line(CentreLine wall, Length fromX, Length fromY, Length toX, Length toY) {
        return new CentreLine(wall.mark(), fromX, fromY, toX, toY, wall.thickness());
    }
}
