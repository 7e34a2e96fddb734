package org.coursewright.bond.internal.laying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;

import org.coursewright.bond.internal.run.Masonry;
import org.junit.jupiter.api.Test;

/** Cut pieces and the blocks of 14 in that they come out of, the saw taking 1/8 in; by hand. */
class CutTallyTest {

    private final CutTally tally = new CutTally(
            Masonry.of(stock("14"), rule("3 1/2", "3/8", "1/2", "3/4")));

    private void add(String length, int times) {
        tally.add(in(length).units(), times);
    }

    @Test
    void twoOfALengthComeOutOfABlockWhereTheyFit() {
        add("6", 3);
        assertThat(tally.blocks()).isEqualTo(2);
        add("7", 3);
        assertThat(tally.blocks()).isEqualTo(3);
    }

    /** 10 in goes with 3 1/2 in, 9 in with 4 in; the second 10 in is left alone. */
    @Test
    void longestGoesWithShortest() {
        add("10", 2);
        add("9", 1);
        add("3 1/2", 1);
        add("4", 1);

        assertThat(tally.blocks()).isEqualTo(3);
        assertThat(tally.lengths()).isSorted().hasSize(4);
    }

    @Test
    void whatGoesIsNoLongerCounted() {
        for (int length = 4; length < 14; length++) {
            add(Integer.toString(length), 2);
        }
        for (int length = 13; length > 4; length--) {
            add(Integer.toString(length), -2);
        }

        assertThat(tally.lengths()).containsExactly(in("4").units());
        assertThat(tally.blocks()).isEqualTo(1);
    }
}
