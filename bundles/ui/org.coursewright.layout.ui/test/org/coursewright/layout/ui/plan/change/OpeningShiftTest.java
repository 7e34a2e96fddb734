package org.coursewright.layout.ui.plan.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;

import org.coursewright.diagram.ui.scale.LengthStep;
import org.coursewright.layout.ui.plan.PlanSample;
import org.coursewright.layout.ui.plan.change.OpeningShift.Jambs;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;

/** In a wall of 210 in, of 14 in units with 1/2 in joints: units end at 6 3/4, 14, 21 1/4 in and so on. */
class OpeningShiftTest {

    private final WallShape wall = PlanSample.room().shape("W1");
    private final Jambs start = new Jambs(Length.ofInches(60), Length.ofInches(44));
    private final OpeningShift shift = new OpeningShift(wall, start, Optional.empty());
    private final OpeningShift fine = new OpeningShift(wall, start, Optional.of(LengthStep.of(DisplayUnit.INCH)));

    @Test
    void movedOpeningStopsWhereAUnitEnds() {
        assertThat(shift.moved(Length.ofInches(4))).isEqualTo(new Jambs(Length.ofInchFraction(259, 4),
                Length.ofInches(44)));
    }

    @Test
    void movedOpeningStaysInTheWall() {
        assertThat(shift.moved(Length.ofInches(-500)).offset()).isEqualTo(Length.ZERO);
        assertThat(shift.moved(Length.ofInches(500)).end()).isEqualTo(wall.length());
    }

    @Test
    void nearJambKeepsTheFarOne() {
        Jambs jambs = shift.nearJamb(Length.ofInches(-30));

        assertThat(jambs.end()).isEqualTo(start.end());
        assertThat(jambs.offset()).isEqualTo(Length.ofInchFraction(57, 2));
    }

    @Test
    void farJambStopsWhereAUnitBegins() {
        Jambs jambs = shift.farJamb(Length.ofInches(6));

        assertThat(jambs.offset()).isEqualTo(start.offset());
        assertThat(jambs.end()).isEqualTo(Length.ofInchFraction(435, 4));
    }

    @Test
    void jambsDoNotPassEachOther() {
        assertThat(shift.nearJamb(Length.ofInches(500)).width().signum()).isPositive();
        assertThat(shift.farJamb(Length.ofInches(-500)).width().signum()).isPositive();
    }

    @Test
    void fineStepsAreQuartersOfAnInch() {
        assertThat(fine.moved(Length.ofInchFraction(5, 16)).offset()).isEqualTo(Length.ofInchFraction(241, 4));
        assertThat(fine.nudged(-2).offset()).isEqualTo(Length.ofInchFraction(119, 2));
    }
}
