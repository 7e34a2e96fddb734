package org.coursewright.bond.internal.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

/** Minimising over a variable against trying all its values. */
class EliminationTest {

    private final Random random = new Random(13);
    private final int[] sizes = {2, 3, 1, 4, 3};

    private CostTable table(int variable) {
        int[] scope = IntStream.range(0, sizes.length).filter(other -> other == variable || random.nextBoolean())
                .toArray();
        int[] own = IntStream.of(scope).map(each -> sizes[each]).toArray();
        return new CostTable(scope, own, random.longs(IntStream.of(own).reduce(1, (a, b) -> a * b), 0, 50).toArray());
    }

    @Test
    void everyLeastSumIsTheLeastOverAllValues() {
        for (int round = 0; round < 300; round++) {
            int variable = random.nextInt(sizes.length);
            List<CostTable> around = new ArrayList<>();
            for (int each = 0; each < 1 + random.nextInt(4); each++) {
                around.add(table(variable));
            }
            int[] scope = around.stream().flatMapToInt(table -> IntStream.of(table.scope())).distinct().sorted()
                    .filter(other -> other != variable).toArray();
            int[] scopeSizes = IntStream.of(scope).map(each -> sizes[each]).toArray();
            long[] own = random.longs(sizes[variable], 0, 50).toArray();
            CostTable least = new CostTable(scope, scopeSizes,
                    new Elimination(variable, own, around, scope, scopeSizes).least());

            int[] chosen = random.ints(sizes.length, 0, 100).toArray();
            IntStream.range(0, chosen.length).forEach(each -> chosen[each] %= sizes[each]);
            long wanted = Long.MAX_VALUE;
            for (int value = 0; value < own.length; value++) {
                chosen[variable] = value;
                wanted = Math.min(wanted, own[value] + around.stream().mapToLong(table -> table.at(chosen)).sum());
            }
            assertThat(least.at(chosen)).isEqualTo(wanted);
        }
    }
}
