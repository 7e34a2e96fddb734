package org.coursewright.layout.ui.plan.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.layout.ui.plan.PlanSample.at;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.geometry.Place;
import org.coursewright.layout.ui.plan.PlanSample;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.PlanVector;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.layout.ui.plan.snap.Snapping;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.StretchWallsCommand;
import org.junit.jupiter.api.Test;

class WallShiftTest {

    private final PlanSample sample = PlanSample.room();

    private static PlanVector way(long east, long north) {
        return new PlanVector(Length.ofInches(east), Length.ofInches(north));
    }

    private Snapping snapping(WallShape... moving) {
        return Snapping.in(sample.shape(), List.of(moving), Length.ofInches(1), moving[0].module(), Optional.empty());
    }

    private PlanPoint end(WallEnds ends, String wall, Place place) {
        return ends.end(sample.shape(wall), place);
    }

    @Test
    void wallOfARoomMovesSidewaysOnly() {
        WallShape east = sample.shape("W2");

        WallShift.Outcome outcome = new WallShift(sample.shape()).move(List.of(east), way(15, 40), snapping(east));

        Length by = Length.ofInchFraction(29, 2);
        assertThat(outcome.by()).isEqualTo(new PlanVector(by, Length.ZERO));
        assertThat(end(outcome.ends(), "W1", Place.END).x()).isEqualTo(Length.ofInches(200).plus(by));
        assertThat(end(outcome.ends(), "W3", Place.START).x()).isEqualTo(Length.ofInches(200).plus(by));
        assertThat(end(outcome.ends(), "W4", Place.START)).isEqualTo(at(0, 150));
    }

    @Test
    void wallByItselfMovesBothWays() {
        sample.wall("C1", 0, -100, 100, -100);
        WallShape screen = sample.shape("C1");

        WallShift.Outcome outcome = new WallShift(sample.shape()).move(List.of(screen), way(15, -15), snapping(screen));

        Length by = Length.ofInchFraction(29, 2);
        assertThat(outcome.by()).isEqualTo(new PlanVector(by, by.negated()));
        assertThat(outcome.ends().changed()).hasSize(1);
    }

    @Test
    void cornerStaysSquareUnlessItsEndMovesAlone() {
        WallShape south = sample.shape("W1");
        WallShift shift = new WallShift(sample.shape());

        WallEnds together = shift.moveEnd(south, Place.END, way(29, 0), false, snapping(south)).ends();
        WallEnds alone = shift.moveEnd(south, Place.END, way(29, 0), true, snapping(south)).ends();

        assertThat(end(together, "W2", Place.START)).isEqualTo(end(together, "W1", Place.END));
        assertThat(end(together, "W2", Place.END).x()).isEqualTo(end(together, "W1", Place.END).x());
        assertThat(alone.changed()).extracting(WallShape::wall).containsExactly(sample.wall("W1"));
    }

    @Test
    void openingsStayWhenTheStartOfTheirWallMoves() {
        Opening door = PlanSample.door(sample.wall("W1"), "D1", 60, 36);
        PlanPoint before = sample.shape("W1").at(door.getOffset(), Length.ZERO);
        WallEnds ends = new WallEnds(sample.shape());
        ends.move(sample.wall("W1"), Place.START, way(-20, 0));

        StretchWallsCommand edit = new StretchWallsCommand(ends.positions(), 1);
        edit.execute();

        assertThat(door.getOffset()).isGreaterThan(Length.ofInches(70));
        assertThat(sample.wall("W1").getFromX()).isEqualTo(Length.ofInches(-20));
        assertThat(before.x()).isEqualTo(Length.ofInches(55));
    }

    @Test
    void alignedWallTakesItsCornersAlong() {
        sample.wall("P1", 300, 160, 400, 160);
        Alignment alignment = new Alignment(sample.shape(), Alignment.Side.CENTRE);

        WallEnds ends = alignment.walls(sample.shape("P1"), List.of(sample.shape("W3")));

        assertThat(end(ends, "W3", Place.START)).isEqualTo(at(200, 160));
        assertThat(end(ends, "W2", Place.END)).isEqualTo(at(200, 160));
        assertThat(end(ends, "W1", Place.END)).isEqualTo(at(200, 0));
    }

    @Test
    void facesAreAlignedWhateverTheThickness() {
        sample.wall("P1", 300, 160, 400, 160).setBond(org.coursewright.model.building.Bond.HEADER);
        Alignment lower = new Alignment(sample.shape(), Alignment.Side.LOWER);

        WallEnds ends = lower.walls(sample.shape("P1"), List.of(sample.shape("W3")));

        assertThat(end(ends, "W3", Place.START).y()).isEqualTo(Length.ofInches(158));
    }

    @Test
    void alignedOpeningsAreOppositeEachOther() {
        Opening model = PlanSample.door(sample.wall("W1"), "D1", 60, 36);
        Opening other = PlanSample.door(sample.wall("W3"), "D2", 20, 48);
        Alignment alignment = new Alignment(sample.shape(), Alignment.Side.CENTRE);

        Map<Opening, Length> offsets = alignment.openings(model, sample.shape("W1"),
                Map.of(other, sample.shape("W3")));

        assertThat(offsets).containsEntry(other, Length.ofInches(210 - 78 - 24));
    }

    @Test
    void copiesLieBesideAndBearFreeMarks() {
        PlanSample.door(sample.wall("W1"), "D1", 60, 36);
        List<WallShape> walls = List.copyOf(sample.shape().walls().values());

        List<Wall> copies = new WallCopies(walls).copies(sample.project);

        assertThat(copies).extracting(Wall::getMark).containsExactly("W5", "W6", "W7", "W8");
        assertThat(copies.get(0).getOpenings()).extracting(Opening::getMark).containsExactly("D2");
        assertThat(copies).allSatisfy(wall -> assertThat(wall.getFromX()).isGreaterThan(Length.ofInches(200)));
    }

    @Test
    void wallsTurnedOverTwiceAreWhereTheyWere() {
        List<WallShape> walls = List.of(sample.shape("W1"), sample.shape("W2"));

        assertThat(new WallCopies(walls).mirrored(true)).extracting(each -> each.fromX())
                .containsExactly(Length.ofInches(200), Length.ZERO);
        assertThat(new WallCopies(walls).mirrored(false)).extracting(each -> each.fromY())
                .containsExactly(Length.ofInches(150), Length.ofInches(150));
    }

    @Test
    void newWallIsLikeTheLastOneAndNewDoorLikeTheLastDoor() {
        sample.wall("W4").setHeight(Length.ofInches(120));
        Opening last = PlanSample.door(sample.wall("W2"), "D7", 10, 30);

        Wall wall = new NewWall(sample.project, sample.storey).between(at(0, 0), at(9, 9));
        Opening door = new NewOpening(sample.project, last.getKind()).in(sample.shape("W1"));

        assertThat(wall.getMark()).isEqualTo("W5");
        assertThat(wall.getHeight()).isEqualTo(Length.ofInches(120));
        assertThat(door.getWidth()).isEqualTo(Length.ofInches(30));
        assertThat(door.getMark()).isEqualTo("D1");
    }
}
