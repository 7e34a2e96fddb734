package org.coursewright.bond.internal.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.List;
import java.util.Map;

import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunFinder;
import org.coursewright.bond.internal.stack.RunStack;
import org.junit.jupiter.api.Test;

/** A wall of six courses between free ends: runs of one shape on one another, those of courses 2 to 5 alike. */
class AlikeRunsTest {

    private static final List<Integer> BELOW_AND_ABOVE = List.of(0, 1);

    private static RunStack stack(WallFace wall) {
        return new RunStack(Masonry.of(wall.stock(), wall.rule()),
                new RunFinder(wall, new Handing(List.of(), Map.of())).find());
    }

    private static RunStack plain() {
        return stack(wall("57 1/2").stocked(stock("14")).ruled(rule("3 1/2", "3/8", "1/2", "3/4")).courses(6).build());
    }

    /** Every such run is also a neighbour of another: it must not be taken for what lies between two. */
    @Test
    void scopeOfARunIsItselfBetweenItsNeighbours() {
        AlikeRuns alike = new AlikeRuns(plain());

        for (int run = 1; run < 5; run++) {
            assertThat(alike.scope(run, BELOW_AND_ABOVE)).containsExactly(run - 1, run, run + 1);
        }
        assertThat(alike.scopes(2, BELOW_AND_ABOVE)).containsExactly(new int[]{0, 1, 2}, new int[]{1, 2, 3},
                new int[]{2, 3, 4}, new int[]{3, 4, 5});
    }

    @Test
    void scopeOfAContactIsItsTwoRunsAndTheirNeighbours() {
        RunStack stack = plain();
        AlikeRuns alike = new AlikeRuns(stack);

        for (RunStack.Contact contact : stack.contacts().subList(1, 4)) {
            assertThat(alike.scope(contact, List.of(0), List.of(1))).containsExactly(contact.below() - 1,
                    contact.below(), contact.above(), contact.above() + 1);
        }
        assertThat(alike.scopes(stack.contacts().get(2), List.of(0), List.of(1))).hasSize(3);
    }

    @Test
    void firstAndLastRunAndThoseBesideAnOpeningAreNotAlike() {
        RunStack stack = stack(wall("120").stocked(stock("14")).ruled(rule("3 1/2", "3/8", "1/2", "3/4")).courses(3)
                .obstacle(Obstacle.Kind.OPENING, in("38 1/2"), in("81"), 2, 2).build());
        AlikeRuns alike = new AlikeRuns(stack);

        assertThat(stack.runs()).hasSize(4);
        assertThat(alike.kind(0)).isNotEqualTo(alike.kind(3));
        assertThat(alike.kind(1)).isNotEqualTo(alike.kind(2));
    }
}
