package org.coursewright.layout.ui.plan.dimension;

import static org.assertj.core.api.Assertions.assertThat;

import org.coursewright.layout.ui.plan.PlanSample;
import org.coursewright.layout.ui.plan.dimension.Dimension.Kind;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.junit.jupiter.api.Test;

class FiguresTest {

    private static final Figures METRIC = new Figures(LengthFormat.MILLIMETRES);

    private final PlanSample sample = PlanSample.room();

    private Dimension dimension(Kind kind) {
        PlanSample.door(sample.wall("W1"), "D1", 30, 36);
        return new DimensionChains(sample.shape()).of(sample.wall("W1")).stream().filter(each -> each.kind() == kind)
                .findFirst().orElseThrow();
    }

    @Test
    void millimetresAreWrittenWithoutTheirUnit() {
        assertThat(METRIC.of(Length.ofMillimetres(-5000))).isEqualTo("-5000");
        assertThat(METRIC.of(dimension(Kind.WIDTH))).isEqualTo("914.4");
    }

    @Test
    void lengthsOverAllNameTheUnit() {
        assertThat(METRIC.of(dimension(Kind.OVERALL))).isEqualTo("5334 mm");
    }

    @Test
    void feetAndInchesAreWrittenAsEverywhere() {
        assertThat(new Figures(LengthFormat.INCHES).of(dimension(Kind.WIDTH))).isEqualTo("3'-0\"");
    }
}
