package org.coursewright.bond.internal.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;

import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** The least sum of choices that do not exclude one another, against trying all; more is excluded from sum to sum. */
class ExclusionNetworkTest {

    private static final int SUMS = 5;
    private static final long MOST_WORK = 1_000_000;

    private record Scoped(int[] scope, Exclusions exclusions) {

        boolean excludes(int[] chosen) {
            return exclusions.costs(scope).at(chosen) > 0;
        }

        Scoped more(Random random) {
            long[] added = random.longs(1 + random.nextInt(3), 0, exclusions.combinations()).toArray();
            return new Scoped(scope, exclusions.with(added));
        }
    }

    private final Random random = new Random(12);

    private long[] costs() {
        long[] costs = new long[2 + random.nextInt(4)];
        for (int choice = 0; choice < costs.length; choice++) {
            costs[choice] = WallCost.of(0, random.nextInt(3), 0);
        }
        return costs;
    }

    private Scoped scoped(long[][] own) {
        int size = 2 + random.nextInt(2);
        int[] scope = random.ints(0, own.length).distinct().limit(size).sorted().toArray();
        return new Scoped(scope, Exclusions.none(IntStream.of(scope).map(run -> own[run].length).toArray()));
    }

    private static long sum(long[][] own, List<Scoped> scoped, int[] chosen) {
        long sum = 0;
        for (int run = 0; run < own.length; run++) {
            sum += own[run][chosen[run]];
        }
        for (Scoped each : scoped) {
            sum += each.excludes(chosen) ? WallCost.of(1, 0, 0) : 0;
        }
        return sum;
    }

    private static long least(long[][] own, List<Scoped> scoped, int[] chosen, int run) {
        if (run == own.length) {
            return sum(own, scoped, chosen);
        }
        long least = Long.MAX_VALUE;
        for (int choice = 0; choice < own[run].length; choice++) {
            chosen[run] = choice;
            least = Math.min(least, least(own, scoped, chosen, run + 1));
        }
        return least;
    }

    @Test
    void choicesLeftOutLoseNothing() {
        leaveOut(UndominatedChoices::inOrder);
    }

    @Test
    void choicesLeftOutInAnotherOrderLoseNothing() {
        leaveOut(UndominatedChoices::shuffled);
    }

    private void leaveOut(Supplier<UndominatedChoices> order) {
        int met = 0;
        for (int round = 0; round < 150; round++) {
            long[][] own = new long[4 + random.nextInt(3)][];
            for (int run = 0; run < own.length; run++) {
                own[run] = costs();
            }
            List<Scoped> scoped = new ArrayList<>();
            for (int each = 0; each < 7; each++) {
                scoped.add(scoped(own));
            }
            UndominatedChoices undominated = order.get();
            TableAlgebra algebra = new TableAlgebra(new WorkLimit());
            for (int sum = 0; sum < SUMS; sum++) {
                ExclusionNetwork network = new ExclusionNetwork(own.clone(), undominated, algebra, MOST_WORK);
                scoped.forEach(each -> network.add(each.scope(), each.exclusions()));
                int[] chosen = network.solve(Progress.NONE);
                long least = least(own, scoped, new int[own.length], 0);

                assertThat(network.isExact()).isTrue();
                if (WallCost.violations(least) == 0) {
                    assertThat(sum(own, scoped, chosen)).isEqualTo(least);
                    met++;
                }
                scoped.replaceAll(each -> each.more(random));
            }
        }
        assertThat(met).isGreaterThan(300);
    }
}
