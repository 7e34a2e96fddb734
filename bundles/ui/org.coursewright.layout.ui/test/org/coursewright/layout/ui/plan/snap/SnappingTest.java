package org.coursewright.layout.ui.plan.snap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.layout.ui.plan.PlanSample.at;

import java.util.List;
import java.util.Optional;

import org.coursewright.diagram.ui.scale.LengthStep;
import org.coursewright.layout.ui.plan.PlanSample;
import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.WallModule;
import org.coursewright.layout.ui.plan.snap.SnapMark.Kind;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;

class SnappingTest {

    private static final Length REACH = Length.ofInches(6);

    private final PlanSample sample = PlanSample.room();
    private final WallModule module = sample.shape("W1").module();
    private final Snapping snapping = Snapping.in(sample.shape(), List.of(), REACH, module, Optional.empty());
    private final Snapping fine = Snapping.in(sample.shape(), List.of(), REACH, module,
            Optional.of(LengthStep.of(DisplayUnit.INCH)));

    private static List<Kind> kinds(Snapped snapped) {
        return snapped.marks().stream().map(SnapMark::kind).toList();
    }

    @Test
    void endOfAWallComesBeforeTheWallItself() {
        Snapped snapped = snapping.point(at(197, 3));

        assertThat(snapped.point()).isEqualTo(at(200, 0));
        assertThat(kinds(snapped)).containsExactly(Kind.END);
        assertThat(snapped.meetsWall()).isTrue();
    }

    @Test
    void placeOnAWallIsAWholeNumberOfStepsFromItsStart() {
        Snapped snapped = snapping.point(at(60, -4));

        assertThat(snapped.point().y()).isEqualTo(Length.ZERO);
        assertThat(snapped.point().x()).isEqualTo(Length.ofInchFraction(29, 4).times(8));
        assertThat(kinds(snapped)).containsExactly(Kind.ON_WALL);
    }

    @Test
    void freePointIsDrawnIntoLineWithEnds() {
        Snapped snapped = snapping.point(at(203, 300));

        assertThat(snapped.point().x()).isEqualTo(Length.ofInches(200));
        assertThat(kinds(snapped)).containsExactly(Kind.IN_LINE);
        assertThat(snapped.meetsWall()).isFalse();
    }

    @Test
    void directionNearARoundAngleBecomesIt() {
        Snapped level = snapping.from(at(0, 300), at(101, 306), Length.ZERO);
        Snapped slanted = snapping.from(at(0, 300), at(-300, 590), Length.ZERO);

        assertThat(level.point().y()).isEqualTo(Length.ofInches(300));
        assertThat(kinds(level)).contains(Kind.ANGLE);
        assertThat(slanted.point().x().negated()).isEqualTo(slanted.point().y().minus(Length.ofInches(300)));
    }

    @Test
    void directionBetweenRoundAnglesStays() {
        Snapped snapped = snapping.from(at(0, 300), at(-200, 400), Length.ZERO);

        assertThat(kinds(snapped)).doesNotContain(Kind.ANGLE);
    }

    @Test
    void lengthFromFaceToFaceIsOfWholeAndHalfUnits() {
        Length more = Length.ofInches(10);
        Snapped snapped = snapping.from(at(-500, 300), at(-400, 301), more);

        Length outer = at(-500, 300).distance(snapped.point()).plus(more);
        assertThat(outer).isEqualTo(module.outer(Length.ofInches(110)));
        assertThat(kinds(snapped)).containsExactly(Kind.MODULE, Kind.ANGLE);
    }

    @Test
    void fineStepTakesThePlaceOfTheModule() {
        Snapped snapped = fine.from(at(-500, 300), at(-400, 300), Length.ofInches(10));

        assertThat(snapped.point()).isEqualTo(at(-400, 300));
    }

    @Test
    void wallThatIsMetAheadStopsTheRay() {
        Snapped snapped = snapping.from(at(60, 0), at(61, 147), Length.ZERO);

        assertThat(snapped.point()).isEqualTo(at(60, 150));
        assertThat(kinds(snapped)).containsExactly(Kind.ON_WALL, Kind.ANGLE);
    }

    @Test
    void movedWallIsDrawnIntoLineWithParallelOnes() {
        sample.wall("P1", 0, 200, 100, 200);
        Snapping others = Snapping.in(sample.shape(), List.of(sample.shape("P1")), REACH, module, Optional.empty());

        Snapped near = others.move(List.of(sample.shape("P1")), Heading.NORTH, Length.ofInches(-47));
        Snapped far = others.move(List.of(sample.shape("P1")), Heading.NORTH, Length.ofInches(15));

        assertThat(near.point()).isEqualTo(at(50, 150));
        assertThat(kinds(near)).containsExactly(Kind.IN_LINE);
        assertThat(far.point().y()).isEqualTo(Length.ofInches(200).plus(Length.ofInchFraction(29, 2)));
    }

    @Test
    void nowhereIsNoDirection() {
        assertThat(snapping.from(at(9, 9), at(9, 9), Length.ZERO).marks()).isEmpty();
    }
}
