package org.coursewright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.coursewright.measure.Length;
import org.coursewright.measure.UnitCode;
import org.junit.jupiter.api.Test;

class VolumeTest {

    @Test
    void volumesConvertExactly() {
        Volume cubicFoot = Volume.of(Length.ofInches(12), Length.ofInches(12), Length.ofInches(12));
        assertThat(cubicFoot.in(UnitCode.CUBIC_FOOT)).isEqualTo(Fraction.ONE);
        // 0.3048³ m³, NIST SP 811, B.8
        assertThat(cubicFoot.in(UnitCode.CUBIC_METRE)).isEqualTo(Fraction.of("0.028316846592"));
        // 3.785411784 L, NIST SP 811, B.8
        assertThat(Volume.of(Fraction.ONE, UnitCode.US_GALLON).in(UnitCode.LITRE)).isEqualTo(
                Fraction.of("3.785411784"));
        assertThat(Volume.of(Fraction.ONE, UnitCode.CUBIC_YARD).in(UnitCode.CUBIC_FOOT)).isEqualTo(Fraction.of(27));
    }

    @Test
    void blockOfFourteenByTenByThreeAndAHalfInchesHasThePublishedVolume() {
        Volume block = Volume.of(Length.ofInches(14), Length.ofInches(10), Length.ofInchFraction(7, 2));
        // handbook O001: 490 in³ = 0.283565 ft³
        assertThat(block.in(UnitCode.CUBIC_FOOT)).isEqualTo(Fraction.of(490, 1728));
    }

    @Test
    void unitThatIsNotOfVolumeIsRefused() {
        assertThatThrownBy(() -> Volume.ZERO.in(UnitCode.KILOGRAM)).hasMessageContaining("KGM").hasMessageContaining(
                "MTQ");
    }
}
