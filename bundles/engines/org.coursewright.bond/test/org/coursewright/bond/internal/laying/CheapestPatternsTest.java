package org.coursewright.bond.internal.laying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.RandomWalls;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.internal.choice.WallCost;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.lap.LapCheck;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunFinder;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** The cheapest patterns of random walls against weighing all patterns. */
class CheapestPatternsTest {

    private static RunStack stack(WallFace wall) {
        RunStack stack = new RunStack(Masonry.of(wall.stock(), wall.rule()),
                new RunFinder(wall, new Handing(List.of(), Map.of())).find());
        stack.seed();
        return stack;
    }

    private static Pattern pattern(RunStack stack, int[] chosen, int run) {
        return stack.pool(run).patterns().get(chosen[run]);
    }

    private static long cost(RunStack stack, int[] chosen) {
        long cost = 0;
        for (int run = 0; run < chosen.length; run++) {
            cost += pattern(stack, chosen, run).cost();
        }
        for (RunStack.Contact contact : stack.contacts()) {
            int violations = LapCheck.violations(pattern(stack, chosen, contact.below()),
                    pattern(stack, chosen, contact.above()), contact.offset(), stack.masonry().lap());
            cost += WallCost.of(violations, 0, 0);
        }
        return cost;
    }

    /** What no choice goes below: every run with its cheapest pattern, and none but the forced short laps. */
    private static long least(RunStack stack) {
        long least = 0;
        for (int run = 0; run < stack.runs().size(); run++) {
            least += stack.pool(run).patterns().stream().mapToLong(Pattern::cost).min().orElseThrow();
        }
        for (RunStack.Contact contact : stack.contacts()) {
            least += WallCost.of(contact.forced(), 0, 0);
        }
        return least;
    }

    @Test
    void cheapestPatternsAreChosenExactlyWhereTheyGoTogether() {
        RandomWalls walls = new RandomWalls(5);
        int together = 0;
        int apart = 0;
        for (int index = 0; index < 60; index++) {
            BondRequest request = walls.wall("60", "140", 5, index % 3);
            RunStack stack = stack(request.walls().get(0));
            Optional<int[]> found = new CheapestPatterns(stack).choose(Progress.NONE);
            PatternChoice all = new PatternChoice(stack);
            int[] weighed = all.weigh(Progress.NONE);

            assertThat(found.isPresent()).isEqualTo(cost(stack, weighed) == least(stack));
            found.ifPresent(chosen -> assertThat(cost(stack, chosen)).isEqualTo(least(stack)));
            together += found.isPresent() ? 1 : 0;
            apart += found.isPresent() ? 0 : 1;
        }
        assertThat(together).isPositive();
        assertThat(apart).isPositive();
    }
}
