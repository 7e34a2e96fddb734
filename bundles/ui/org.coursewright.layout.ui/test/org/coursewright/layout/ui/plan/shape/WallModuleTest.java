package org.coursewright.layout.ui.plan.shape;

import static org.assertj.core.api.Assertions.assertThat;

import org.coursewright.layout.ui.plan.PlanSample;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Bond;
import org.junit.jupiter.api.Test;

/** Units of 14 in with joints of 1/2 in: half a module is 7 1/4 in, worked by hand. */
class WallModuleTest {

    private final WallModule module = PlanSample.room().shape("W1").module();

    @Test
    void stepIsHalfAUnitAndAJoint() {
        assertThat(module.step()).isEqualTo(Length.ofInchFraction(29, 4));
    }

    @Test
    void nearJambIsWhereAUnitEnds() {
        assertThat(module.nearJamb(Length.ofInches(64))).isEqualTo(Length.ofInchFraction(259, 4));
        assertThat(module.nearJamb(Length.ZERO)).isEqualTo(Length.ZERO);
    }

    @Test
    void farJambIsWhereAUnitBegins() {
        assertThat(module.farJamb(Length.ofInches(108))).isEqualTo(Length.ofInchFraction(435, 4));
    }

    @Test
    void openingIsWholeAndHalfUnitsAndOneJointMore() {
        assertThat(module.opening(Length.ofInches(45))).isEqualTo(Length.ofInches(44));
        assertThat(module.opening(Length.ZERO)).isEqualTo(Length.ofInchFraction(31, 4));
    }

    @Test
    void wallIsWholeAndHalfUnitsAndOneJointLess() {
        assertThat(module.outer(Length.ofInches(480))).isEqualTo(Length.ofInches(478));
        assertThat(module.outer(Length.ZERO)).isEqualTo(Length.ofInches(14));
    }

    @Test
    void headersAreAsThickAsTheUnitIsLong() {
        PlanSample sample = PlanSample.room();
        sample.wall("W1").setBond(Bond.HEADER);

        assertThat(sample.shape("W1").module().thickness()).isEqualTo(Length.ofInches(14));
        assertThat(sample.shape("W1").module().step()).isEqualTo(Length.ofInchFraction(21, 4));
    }
}
