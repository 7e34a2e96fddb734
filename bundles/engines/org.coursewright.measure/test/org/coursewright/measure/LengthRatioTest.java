package org.coursewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Random;

import org.junit.jupiter.api.Test;

class LengthRatioTest {

    /** 1 mm / 3 = 0.333333… mm; 2 mm / 3 = 0.666666… mm, half up in the sixth decimal. */
    @Test
    void theQuotientIsWrittenWithSixDecimalsHalfUp() {
        assertThat(new LengthRatio(Length.ofMillimetres(1), 3).toMillimetres()).isEqualTo(new BigDecimal("0.333333"));
        assertThat(new LengthRatio(Length.ofMillimetres(2), 3).toMillimetres()).isEqualTo(new BigDecimal("0.666667"));
        assertThat(new LengthRatio(Length.ofMillimetres(100), 10).toMillimetres()).isEqualTo(new BigDecimal("10"));
    }

    @Test
    void oneUnitOverAThousandJointsIsStillTooWide() {
        Length joint = Length.ofInchFraction(1, 2);
        LengthRatio over = new LengthRatio(joint.times(1000).plus(Length.ofUnits(1)), 1000);
        assertThat(over.isWithin(Length.ZERO, joint)).isFalse();
        assertThat(new LengthRatio(joint.times(1000), 1000).isWithin(joint, joint)).isTrue();
    }

    @Test
    void equalQuotientsOfDifferentCountsCompareAsEqual() {
        assertThat(new LengthRatio(Length.ofMillimetres(2), 4))
                .isEqualByComparingTo(new LengthRatio(Length.ofMillimetres(1), 2));
    }

    @Test
    void comparingIsExactForAnyLength() {
        Random random = new Random(127);
        for (int i = 0; i < 20_000; i++) {
            LengthRatio a = new LengthRatio(Length.ofUnits(random.nextLong()), random.nextInt(1, Integer.MAX_VALUE));
            LengthRatio b = new LengthRatio(Length.ofUnits(random.nextLong()), random.nextInt(1, Integer.MAX_VALUE));
            assertThat(Integer.signum(a.compareTo(b))).isEqualTo(product(a, b).compareTo(product(b, a)));
            assertThat(a.isWithin(b.total(), b.total())).isEqualTo(product(a, new LengthRatio(b.total(), 1))
                    .equals(product(new LengthRatio(b.total(), 1), a)));
        }
    }

    @Test
    void aCountBelowOneIsRefused() {
        assertThatThrownBy(() -> new LengthRatio(Length.ZERO, 0)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The count (0) must be at least 1.");
    }

    private static BigInteger product(LengthRatio a, LengthRatio b) {
        return BigInteger.valueOf(a.total().units()).multiply(BigInteger.valueOf(b.count()));
    }
}
