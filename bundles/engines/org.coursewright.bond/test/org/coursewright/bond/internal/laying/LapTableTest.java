package org.coursewright.bond.internal.laying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.IntStream;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.RandomWalls;
import org.coursewright.bond.internal.handing.AlternatingHanding;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunFinder;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;
import org.junit.jupiter.api.Test;

/** Lap violations between pools, on random walls. */
class LapTableTest {

    @Test
    void mirroredTableHoldsWhatIsCounted() {
        RandomWalls walls = new RandomWalls(41);
        int contacts = 0;
        for (int index = 0; index < 10; index++) {
            BondRequest request = walls.wall("60", "200", 6, 1);
            Handing handing = new Handing(request.meetings(), AlternatingHanding.of(request));
            RunStack stack = new RunStack(
                    Masonry.of(request.walls().get(0).stock(), request.walls().get(0).rule()),
                    new RunFinder(request.walls().get(0), handing).find());
            stack.seed();
            for (RunStack.Contact contact : stack.contacts()) {
                assertMirrored(stack, contact);
                contacts++;
            }
        }
        assertThat(contacts).isGreaterThan(10);
    }

    /** Compared before and after the pools grow. */
    private static void assertMirrored(RunStack stack, RunStack.Contact contact) {
        PatternPool below = stack.pool(contact.below());
        PatternPool above = stack.pool(contact.above());
        long lap = stack.masonry().lap();
        LapTable turned = new LapTable(above, below, -contact.offset(), lap, contact.forced(), Optional.empty());
        LapTable mirrored = new LapTable(below, above, contact.offset(), lap, contact.forced(), Optional.of(turned));
        LapTable counted = new LapTable(below, above, contact.offset(), lap, contact.forced(), Optional.empty());
        for (int growth = 0; growth < 2; growth++) {
            mirrored.grow();
            counted.grow();
            int[] lower = IntStream.range(0, below.patterns().size()).toArray();
            int[] upper = IntStream.range(0, above.patterns().size()).toArray();

            assertThat(mirrored.costs(lower, upper)).isEqualTo(counted.costs(lower, upper));
            below.seedMore();
        }
    }
}
