package org.coursewright.layout.ui.part;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MouseAheadTest {

    private final MouseAhead mouse = new MouseAhead();

    @Test
    void mouseThatHasNotMovedMayGoAnywhere() {
        assertThat(mouse.after(0)).isEmpty();
    }

    @Test
    void mouseGoesOnAsFarAsTheLastTimeOrALittleMoreOrLess() {
        mouse.after(10);

        assertThat(mouse.after(14).limit(5)).containsExactly(18, 19, 17, 15, 13);
    }

    @Test
    void slowMouseGoesOnByAPixelOrTwoOrTurnsBack() {
        mouse.after(-6);

        assertThat(mouse.after(-7).limit(3)).containsExactly(-8, -9, -6);
    }

    @Test
    void mouseThatRestsKeepsItsWay() {
        mouse.after(5);
        mouse.after(3);

        assertThat(mouse.after(3).limit(2)).containsExactly(1, 0);
    }

    @Test
    void nextDragBeginsAnew() {
        mouse.after(7);
        mouse.forget();

        assertThat(mouse.after(0)).isEmpty();
    }
}
