package org.coursewright.exchange.sheet.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;

import org.coursewright.measure.DisplayUnit;
import org.junit.jupiter.api.Test;

class ScalesTest {

    @Test
    void wantedScaleIsTakenIfItFits() {
        assertThat(Scales.first(Optional.of(23), DisplayUnit.INCH, scale -> true)).isEqualTo(23);
    }

    @Test
    void nextStandardScaleThatFitsIsTakenElse() {
        assertThat(Scales.first(Optional.of(20), DisplayUnit.MILLIMETRE, scale -> scale >= 30)).isEqualTo(50);
        assertThat(Scales.first(Optional.of(20), DisplayUnit.INCH, scale -> scale >= 30)).isEqualTo(32);
    }

    @Test
    void largestStandardScaleThatFitsIsTakenIfNoneIsWanted() {
        assertThat(Scales.first(Optional.empty(), DisplayUnit.INCH, scale -> scale >= 13)).isEqualTo(16);
    }

    @Test
    void wallBeyondAllStandardScalesStillGetsOne() {
        assertThat(Scales.first(Optional.empty(), DisplayUnit.MILLIMETRE, scale -> scale > 1500)).isEqualTo(2000);
    }

    @Test
    void architectsScalesAreNamed() {
        // 12 in to the foot over 48 is 1/4 in
        assertThat(Scales.describe(48, DisplayUnit.INCH)).isEqualTo("1:48 (1/4 in to the foot)");
        assertThat(Scales.describe(50, DisplayUnit.MILLIMETRE)).isEqualTo("1:50");
    }
}
