package org.coursewright.estimate.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ValueAxisTest {

    @Test
    void valuesLieInProportion() {
        ValueAxis axis = new ValueAxis(0, 200, 10, 410);
        assertThat(axis.x(0)).isEqualTo(10);
        assertThat(axis.x(50)).isEqualTo(110);
        assertThat(axis.x(200)).isEqualTo(410);
    }

    @Test
    void ticksAreRoundAndFarEnoughApartToBeRead() {
        assertThat(new ValueAxis(0, 34_347, 0, 400).ticks()).containsExactly(0.0, 10_000.0, 20_000.0, 30_000.0);
        assertThat(new ValueAxis(51_485, 57_658, 0, 450).ticks()).containsExactly(52_000.0, 53_000.0, 54_000.0,
                55_000.0,
                56_000.0, 57_000.0);
    }

    @Test
    void narrowAxisHasFewTicks() {
        assertThat(new ValueAxis(0, 10, 0, 5).ticks()).hasSizeLessThan(3);
    }
}
