package org.coursewright.layout.ui.plan.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.coursewright.layout.ui.plan.paint.BrokenLine.Part;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.junit.jupiter.api.Test;

class BrokenLineTest {

    private static final Rectangle WORDS = new Rectangle(-10, 25, 20, 25);

    private static List<Part> parts(int toX, int toY, Rectangle... words) {
        return new BrokenLine(new Point(0, 0), new Point(toX, toY)).parts(List.of(words));
    }

    @Test
    void lineThatRunsThroughWordsIsBrokenThere() {
        assertThat(parts(0, 100, WORDS)).containsExactly(new Part(0, 0.25), new Part(0.5, 1));
    }

    @Test
    void lineThatMissesTheWordsIsWhole() {
        assertThat(parts(100, 0, WORDS)).containsExactly(new Part(0, 1));
        assertThat(parts(100, 100, WORDS)).as("passes beside them").containsExactly(new Part(0, 1));
        assertThat(parts(0, 100)).containsExactly(new Part(0, 1));
    }

    @Test
    void lineAlongTheEdgeOfTheWordsIsWhole() {
        assertThat(parts(0, 100, new Rectangle(0, 25, 20, 25))).containsExactly(new Part(0, 1));
    }

    @Test
    void slantedLineIsBrokenWhereItLeavesTheBox() {
        assertThat(parts(100, 100, new Rectangle(20, 10, 60, 40))).containsExactly(new Part(0, 0.2), new Part(0.5, 1));
    }

    @Test
    void wordsThatOverlapMakeOneGap() {
        assertThat(parts(0, 100, new Rectangle(-5, 40, 10, 20), WORDS)).containsExactly(new Part(0, 0.25),
                new Part(0.6, 1));
    }

    @Test
    void lineThatEndsInWordsEndsBeforeThem() {
        assertThat(parts(0, 40, WORDS)).containsExactly(new Part(0, 0.625));
        assertThat(parts(0, 40, new Rectangle(-5, -5, 10, 100))).isEmpty();
    }
}
