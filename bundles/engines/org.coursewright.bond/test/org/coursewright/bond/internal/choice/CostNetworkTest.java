package org.coursewright.bond.internal.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** Elimination against trying every choice. */
class CostNetworkTest {

    private record Pair(int first, int second, long[] costs) {
    }

    private static final int VALUES = 3;

    private static long cost(long[][] own, List<Pair> pairs, int[] chosen) {
        long cost = 0;
        for (int variable = 0; variable < own.length; variable++) {
            cost += own[variable][chosen[variable]];
        }
        for (Pair pair : pairs) {
            cost += pair.costs[chosen[pair.first] * own[pair.second].length + chosen[pair.second]];
        }
        return cost;
    }

    private static long least(long[][] own, List<Pair> pairs, int[] chosen, int variable) {
        if (variable == own.length) {
            return cost(own, pairs, chosen);
        }
        long least = Long.MAX_VALUE;
        for (int value = 0; value < own[variable].length; value++) {
            chosen[variable] = value;
            least = Math.min(least, least(own, pairs, chosen, variable + 1));
        }
        return least;
    }

    private static long[] random(Random random, int length) {
        return random.longs(length, 0, 20).toArray();
    }

    /** Loose and dense networks, several tables between the same two variables among them. */
    @Test
    void choiceIsAsCheapAsAnyOfAllChoices() {
        Random random = new Random(4);
        for (int round = 0; round < 300; round++) {
            long[][] own = new long[2 + random.nextInt(6)][];
            for (int variable = 0; variable < own.length; variable++) {
                own[variable] = random(random, 1 + random.nextInt(VALUES));
            }
            List<Pair> pairs = new ArrayList<>();
            CostNetwork network = new CostNetwork(own);
            for (int pair = 0; pair < random.nextInt(14); pair++) {
                int first = random.nextInt(own.length - 1);
                int second = first + 1 + random.nextInt(own.length - first - 1);
                Pair added = new Pair(first, second, random(random, own[first].length * own[second].length));
                pairs.add(added);
                network.add(first, second, added.costs);
            }
            int[] chosen = network.solve(Progress.NONE);

            assertThat(network.isExact()).isTrue();
            assertThat(cost(own, pairs, chosen)).isEqualTo(least(own, pairs, new int[own.length], 0));
        }
    }

    /** Nine variables of forty values, each tied to all others: too much to be exact, so it does not claim to be. */
    @Test
    void tooDenseNetworkIsSolvedButNotCalledExact() {
        Random random = new Random(5);
        long[][] own = new long[9][];
        for (int variable = 0; variable < own.length; variable++) {
            own[variable] = random(random, 40);
        }
        CostNetwork network = new CostNetwork(own);
        for (int first = 0; first < own.length; first++) {
            for (int second = first + 1; second < own.length; second++) {
                network.add(first, second, random(random, 1600));
            }
        }
        int[] chosen = network.solve(Progress.NONE);

        assertThat(Arrays.stream(chosen).boxed()).hasSize(9).allMatch(value -> value >= 0 && value < 40);
        assertThat(network.isExact()).isFalse();
    }

    @Test
    void costsAreReadBackAsTheyWereWritten() {
        long cost = WallCost.of(3, 41, 5) + WallCost.of(2, 1, WallCost.MOST_PREFERENCE);

        assertThat(WallCost.violations(cost)).isEqualTo(5);
        assertThat(WallCost.cuts(cost)).isEqualTo(42);
    }
}
