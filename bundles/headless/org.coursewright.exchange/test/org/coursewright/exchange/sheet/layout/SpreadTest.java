package org.coursewright.exchange.sheet.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;

import org.junit.jupiter.api.Test;

class SpreadTest {

    @Test
    void labelsWithRoomStayWhereTheyAre() {
        assertThat(Spread.of(new double[]{1, 5, 9}, 2, 0, 10)).hasValueSatisfying(
                places -> assertThat(places).containsExactly(1, 5, 9));
    }

    @Test
    void twoThatClashShareTheMove() {
        assertThat(Spread.of(new double[]{5, 5}, 2, 0, 10)).hasValueSatisfying(
                places -> assertThat(places).containsExactly(4, 6));
    }

    @Test
    void noLabelLeavesItsBounds() {
        assertThat(Spread.of(new double[]{0, 0, 0}, 2, 0, 10)).hasValueSatisfying(
                places -> assertThat(places).containsExactly(0, 2, 4));
    }

    @Test
    void labelsThatFindNoRoomAreRefused() {
        assertThat(Spread.of(new double[]{1, 2, 3, 4}, 4, 0, 10)).isEmpty();
    }

    @Test
    void anyLabelsKeepTheirOrderTheirPitchAndTheirBounds() {
        Random random = new Random(7);
        for (int trial = 0; trial < 500; trial++) {
            double[] wanted = random.doubles(1 + random.nextInt(30), 0, 100).sorted().toArray();
            double[] places = Spread.of(wanted, 3, 0, 100).orElseThrow();
            assertThat(places[0]).isGreaterThanOrEqualTo(0);
            assertThat(places[places.length - 1]).isLessThanOrEqualTo(100 + 1e-9);
            for (int i = 1; i < places.length; i++) {
                assertThat(places[i] - places[i - 1]).as(Arrays.toString(wanted)).isGreaterThanOrEqualTo(3 - 1e-9);
            }
        }
    }
}
