package org.coursewright.takeoff.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.coursewright.measure.Length;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Volume;
import org.junit.jupiter.api.Test;

class MortarRulesTest {

    /** O020 and O021: 38 cubic feet for a cubic yard, a quarter of it cement in a mix of 1:3. */
    @Test
    void ruleThirtyEightGivesCementAndSandOfACubicYard() {
        Fraction loose = MortarRules.looseMaterials(Volume.of(Fraction.ONE, UnitCode.CUBIC_YARD)).in(
                UnitCode.CUBIC_FOOT);
        assertThat(loose.times(Fraction.of(1, 4))).isEqualTo(Fraction.of("9.5"));
        assertThat(loose.times(Fraction.of(3, 4))).isEqualTo(Fraction.of("28.5"));
    }

    /** O022 and O023, ASTM C270 from memory: type N of 1:1, type S of 1:1/2. */
    @Test
    void sandIsWithinTwoAndAQuarterToThreeTimesTheBinders() {
        MortarRules.Range typeN = MortarRules.sand(Fraction.of(2));
        assertThat(typeN).isEqualTo(new MortarRules.Range(Fraction.of("4.5"), Fraction.of(6)));
        MortarRules.Range typeS = MortarRules.sand(Fraction.of("1.5"));
        assertThat(typeS).isEqualTo(new MortarRules.Range(Fraction.of("3.375"), Fraction.of("4.5")));
        assertThat(typeS.contains(Fraction.of("4.5"))).isTrue();
        assertThat(typeS.contains(Fraction.of("3.374"))).isFalse();
    }

    @Test
    void jointIsAtLeastTwiceTheLargestParticle() {
        assertThat(MortarRules.fits(mm(5), mm(10))).isTrue();
        assertThat(MortarRules.fits(mm(5), Length.ofUnits(mm(10).units() - 1))).isFalse();
        assertThat(MortarRules.thinnestJoint(mm(8))).isEqualTo(mm(16));
    }

    @Test
    void mortarWithoutBinderHasNoRangeOfSand() {
        assertThatThrownBy(() -> MortarRules.sand(Fraction.ZERO)).hasMessageContaining("more than zero");
    }

    private static Length mm(long millimetres) {
        return Length.ofMillimetres(millimetres);
    }
}
