package org.coursewright.exchange.sheet.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.coursewright.exchange.sheet.page.Area;
import org.coursewright.exchange.sheet.page.Spot;
import org.junit.jupiter.api.Test;

class ConvexTest {

    private static final Convex SQUARE = new Convex(
            List.of(new Spot(0, 0), new Spot(4, 0), new Spot(4, 4), new Spot(0, 4)));

    @Test
    void whatLiesRightOfALineIsCutOff() {
        // the diagonal from the lower left corner up: its left half is a triangle
        Convex half = SQUARE.leftOf(new Spot(0, 0), new Spot(4, 4));
        assertThat(half.holds(new Area(0.5, 2, 1, 1))).isTrue();
        assertThat(half.holds(new Area(2, 0.5, 1, 1))).isFalse();
    }

    @Test
    void nothingIsLeftBeyondALine() {
        assertThat(SQUARE.leftOf(new Spot(-1, 0), new Spot(-1, 4)).isEmpty()).isTrue();
    }

    @Test
    void hatchingStaysInside() {
        assertThat(SQUARE.hatch(1)).hasSize(7).allSatisfy(line -> {
            assertThat(line.from().x()).isBetween(0.0, 4.0);
            assertThat(line.to().y()).isBetween(0.0, 4.0);
            assertThat(line.from().x() - line.from().y()).isEqualTo(line.to().x() - line.to().y());
        });
    }
}
