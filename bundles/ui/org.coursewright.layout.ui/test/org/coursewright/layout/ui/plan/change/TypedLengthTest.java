package org.coursewright.layout.ui.plan.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.layout.ui.plan.PlanSample.at;

import org.coursewright.layout.ui.plan.PlanSample;
import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.coursewright.layout.ui.plan.dimension.Dimension.Kind;
import org.coursewright.layout.ui.plan.dimension.DimensionChains;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.ProjectCommand;
import org.junit.jupiter.api.Test;

class TypedLengthTest {

    private final PlanSample sample = PlanSample.room();

    private Dimension dimension(String wall, Kind kind, int index) {
        return new DimensionChains(sample.shape()).of(sample.wall(wall)).stream()
                .filter(each -> each.kind() == kind).toList().get(index);
    }

    private ProjectCommand type(Dimension dimension, long inches) {
        ProjectCommand edit = new TypedLength(sample.shape()).edit(dimension, Length.ofInches(inches)).orElseThrow();
        assertThat(edit.refusal()).isEmpty();
        edit.execute();
        return edit;
    }

    @Test
    void pierBeforeAnOpeningMovesTheOpening() {
        Opening door = PlanSample.door(sample.wall("W1"), "D1", 30, 36);

        type(dimension("W1", Kind.TO_JAMB, 0), 41);

        assertThat(door.getOffset()).isEqualTo(Length.ofInches(41));
        assertThat(door.getWidth()).isEqualTo(Length.ofInches(36));
    }

    @Test
    void pierBetweenOpeningsMovesTheSecond() {
        PlanSample.door(sample.wall("W1"), "D1", 30, 36);
        Opening second = PlanSample.door(sample.wall("W1"), "D2", 100, 36);

        type(dimension("W1", Kind.TO_JAMB, 1), 44);

        assertThat(second.getOffset()).isEqualTo(Length.ofInches(110));
    }

    @Test
    void pierAfterAnOpeningMovesItTheOtherWay() {
        Opening door = PlanSample.door(sample.wall("W1"), "D1", 30, 36);

        type(dimension("W1", Kind.FROM_JAMB, 0), 100);

        assertThat(door.getOffset()).isEqualTo(Length.ofInches(74));
    }

    @Test
    void widthKeepsTheNearJamb() {
        Opening door = PlanSample.door(sample.wall("W1"), "D1", 30, 36);

        type(dimension("W1", Kind.WIDTH, 0), 44);

        assertThat(door.getOffset()).isEqualTo(Length.ofInches(30));
        assertThat(door.getWidth()).isEqualTo(Length.ofInches(44));
    }

    @Test
    void overallLengthKeepsTheRoomSquare() {
        ProjectCommand edit = type(dimension("W1", Kind.OVERALL, 0), 230);

        assertThat(sample.shape("W1").length()).isEqualTo(Length.ofInches(230));
        assertThat(sample.shape("W2").from()).isEqualTo(at(220, 0));
        assertThat(sample.shape("W2").to()).isEqualTo(at(220, 150));
        assertThat(sample.shape("W3").length()).isEqualTo(Length.ofInches(230));
        assertThat(sample.shape("W4").from()).isEqualTo(at(0, 150));
        assertThat(edit.getLabel()).isEqualTo("Stretch Wall W1");
    }

    @Test
    void openingsOfAWallWhoseStartMovesStayWhereTheyAre() {
        Opening north = PlanSample.door(sample.wall("W3"), "D1", 30, 36);

        type(dimension("W1", Kind.OVERALL, 0), 230);

        assertThat(north.getOffset()).isEqualTo(Length.ofInches(50));
    }

    @Test
    void clearLengthMovesTheWallAtItsFarEndAndWhatEndsThere() {
        Wall partition = sample.wall("P1", 80, 0, 80, 150);
        Wall across = sample.wall("P2", 80, 75, 200, 75);
        sample.wall("P3", 80, 40, 0, 40);
        Dimension clear = dimension("P1", Kind.CLEAR, 0);
        assertThat(clear.far()).contains(across);

        type(clear, 80);

        assertThat(sample.shape().wall(across).orElseThrow().from()).isEqualTo(at(80, 90));
        assertThat(sample.shape().wall(across).orElseThrow().to()).isEqualTo(at(200, 90));
        assertThat(sample.shape().wall(partition).orElseThrow().to()).isEqualTo(at(80, 150));
    }

    @Test
    void lengthThatLeavesNoRoomIsRefused() {
        PlanSample.door(sample.wall("W1"), "D1", 30, 36);

        ProjectCommand edit = new TypedLength(sample.shape())
                .edit(dimension("W1", Kind.FROM_JAMB, 0), Length.ofInches(205)).orElseThrow();

        assertThat(edit.refusal()).isPresent();
    }

    /** The wall is 210 in long: from 174 in on there is no room for 36 in. */
    @Test
    void openingThatWouldReachBeyondItsWallIsTold() {
        PlanSample.door(sample.wall("W1"), "D1", 30, 36);
        TypedLength typed = new TypedLength(sample.shape());
        Dimension pier = dimension("W1", Kind.TO_JAMB, 0);
        Dimension width = dimension("W1", Kind.WIDTH, 0);

        assertThat(typed.beyondTheWall(pier, Length.ofInches(174))).isEmpty();
        assertThat(typed.beyondTheWall(pier, Length.ofInches(175))).map(OpeningShift.Jambs::end)
                .contains(Length.ofInches(211));
        assertThat(typed.beyondTheWall(width, Length.ofInches(180))).isEmpty();
        assertThat(typed.beyondTheWall(width, Length.ofInches(181))).isPresent();
    }
}
