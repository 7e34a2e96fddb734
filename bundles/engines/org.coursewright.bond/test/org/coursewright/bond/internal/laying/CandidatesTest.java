package org.coursewright.bond.internal.laying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.bond.RandomWalls;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.internal.choice.CostNetwork;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunFinder;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** Choosing among the patterns that come into question against choosing among all. */
class CandidatesTest {

    @Test
    void whatIsLeftOutWouldNotHaveBeenCheaper() {
        RandomWalls walls = new RandomWalls(3);
        int left = 0;
        for (int index = 0; index < 20; index++) {
            WallFace wall = walls.wall("80", "200", 4, 1).walls().get(0);
            RunStack stack = new RunStack(Masonry.of(wall.stock(), wall.rule()),
                    new RunFinder(wall, new Handing(List.of(), Map.of())).find());
            stack.seed();
            List<int[]> all = new ArrayList<>();
            List<int[]> candidates = new ArrayList<>();
            for (int run = 0; run < stack.runs().size(); run++) {
                int[] every = new int[stack.pool(run).patterns().size()];
                Arrays.setAll(every, pattern -> pattern);
                all.add(every);
                candidates.add(new Candidates(stack.pool(run), sides(stack, run)).find());
                left += every.length - candidates.get(run).length;
            }

            assertThat(least(stack, candidates)).isEqualTo(least(stack, all));
        }
        assertThat(left).as("patterns left out").isGreaterThan(100);
    }

    private static List<Candidates.Side> sides(RunStack stack, int run) {
        return stack.contactsOf(run).stream()
                .map(contact -> new Candidates.Side(table(stack, contact), contact.below() == run)).toList();
    }

    private static LapTable table(RunStack stack, RunStack.Contact contact) {
        LapTable table = new LapTable(stack.pool(contact.below()), stack.pool(contact.above()), contact.offset(),
                stack.masonry().lap(), contact.forced(), Optional.empty());
        table.grow();
        return table;
    }

    private static long least(RunStack stack, List<int[]> patterns) {
        long[][] own = new long[patterns.size()][];
        for (int run = 0; run < own.length; run++) {
            PatternPool pool = stack.pool(run);
            own[run] = Arrays.stream(patterns.get(run)).mapToLong(index -> pool.patterns().get(index).cost())
                    .toArray();
        }
        CostNetwork network = new CostNetwork(own);
        stack.contacts().forEach(contact -> network.add(contact.below(), contact.above(),
                table(stack, contact).costs(patterns.get(contact.below()), patterns.get(contact.above()))));
        int[] chosen = network.solve(Progress.NONE);
        assertThat(network.isExact()).isTrue();
        long cost = 0;
        for (int run = 0; run < own.length; run++) {
            cost += own[run][chosen[run]];
        }
        for (RunStack.Contact contact : stack.contacts()) {
            cost += table(stack, contact).costs(new int[]{patterns.get(contact.below())[chosen[contact.below()]]},
                    new int[]{patterns.get(contact.above())[chosen[contact.above()]]})[0];
        }
        return cost;
    }
}
