package org.coursewright.takeoff.nesting.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;

import org.coursewright.measure.Length;
import org.coursewright.takeoff.nesting.CutStock;
import org.junit.jupiter.api.Test;

class KnapsackTest {

    @Test
    void mostValuableOfFewPatternsIsFound() {
        Sizes sizes = sizes(10, List.of(6L, 5L, 4L));
        assertThat(new Knapsack(sizes, new long[]{9, 9, 9}).best(new long[]{60, 55, 30})).containsExactly(0, 2, 0);
        assertThat(new Knapsack(sizes, new long[]{9, 1, 9}).best(new long[]{60, 55, 30})).containsExactly(1, 0, 1);
        assertThat(new Knapsack(sizes, new long[]{9, 9, 9}).best(new long[]{0, 0, 0})).containsExactly(0, 0, 0);
    }

    /** Against trying every pattern. */
    @Test
    void valueIsThatOfTheBestPattern() {
        Random random = new Random(17);
        for (int i = 0; i < 400; i++) {
            TreeSet<Long> lengths = new TreeSet<>();
            for (int n = 0; n < 1 + random.nextInt(5); n++) {
                lengths.add(1L + random.nextInt(30));
            }
            Sizes sizes = sizes(20 + random.nextInt(60), new ArrayList<>(lengths.descendingSet()));
            long[] most = random.longs(sizes.count(), 0, 6).toArray();
            long[] values = random.longs(sizes.count(), 0, 50).toArray();
            int[] best = new Knapsack(sizes, most).best(values);
            long size = 0;
            long value = 0;
            for (int item = 0; item < best.length; item++) {
                assertThat((long) best[item]).isBetween(0L, most[item]);
                size += best[item] * sizes.size(item);
                value += best[item] * values[item];
            }
            assertThat(size).isLessThanOrEqualTo(sizes.capacity());
            assertThat(value).isEqualTo(bestByTrying(sizes, most, values, 0, sizes.capacity()));
        }
    }

    @Test
    void sizesAreDividedByTheirCommonDivisor() {
        Sizes sizes = new Sizes(new CutStock(Length.ofInches(14), Length.ofInchFraction(1, 8), false), List.of(Length
                .ofInches(7), Length.ofInches(3)));
        // with kerf 57/8 and 25/8 in of 113/8 in
        assertThat(sizes.size(0)).isEqualTo(57);
        assertThat(sizes.size(1)).isEqualTo(25);
        assertThat(sizes.capacity()).isEqualTo(113);
    }

    private static long bestByTrying(Sizes sizes, long[] most, long[] values, int item, long room) {
        if (item == sizes.count()) {
            return 0;
        }
        long best = 0;
        for (long copies = 0; copies <= most[item] && copies * sizes.size(item) <= room; copies++) {
            best = Math.max(best, copies * values[item] + bestByTrying(sizes, most, values, item + 1, room - copies
                    * sizes.size(item)));
        }
        return best;
    }

    /** Odd lengths of one unit each have the common divisor 1, so that sizes stay as they are. */
    private static Sizes sizes(long stock, List<Long> lengths) {
        return new Sizes(new CutStock(Length.ofUnits(stock), Length.ZERO, false), lengths.stream().map(Length::ofUnits)
                .toList());
    }
}
