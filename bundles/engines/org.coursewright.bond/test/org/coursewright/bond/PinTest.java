package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.List;
import java.util.Random;

import org.coursewright.bond.ExhaustiveLayout.Cost;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** What somebody decided about single runs is kept exactly, or the run is left unfilled and says so. */
class PinTest {

    private static WallLayout lay(WallBuilder wall) {
        WallLayout layout = BondSolver.standard().solve(wall.alone(), Progress.NONE).walls().get(0);
        LayoutAudit.check(wall.build(), layout);
        return layout;
    }

    private static Run run(WallLayout layout, int course) {
        return layout.courses().get(course - 1).runs().get(0);
    }

    /** Ten units fill 144 in with joints of 4/9 in; with joints of exactly 1/2 in the nine leave 13 1/2 in to be cut. */
    @Test
    void pinnedJointIsKeptAndCostsTheCutItTakes() {
        WallLayout layout = lay(wall("144").courses(1).pinned(new Pin.OfJoint(1, in("20"), in("1/2"))));

        assertThat(run(layout, 1).joint()).contains(new LengthRatio(in("9/2"), 9));
        assertThat(layout.cutPieces()).isEqualTo(1);
        assertThat(layout.optimal()).isTrue();
        assertThat(lay(wall("144").courses(1)).cutPieces()).isZero();
    }

    @Test
    void pinnedPieceLiesWhereItIsPinned() {
        WallLayout layout = lay(wall("144 1/2").courses(1).pinned(new Pin.OfPiece(1, in("60"), in("7 1/4"))));

        Run run = run(layout, 1);
        long parts = run.jointCount();
        long joint = run.joint().orElseThrow().total().units();
        long at = 0;
        Length covering = Length.ZERO;
        for (Piece piece : run.pieces()) {
            long to = at + piece.length().units() * parts;
            covering = at <= in("60").units() * parts && in("60").units() * parts < to ? piece.length() : covering;
            at = to + joint;
        }
        assertThat(covering).isEqualTo(in("7 1/4"));
    }

    @Test
    void pinInOneCourseLeavesTheOthersFree() {
        WallLayout layout = lay(wall("144").courses(3).ruled(rule("0", "3/8", "1/2", "3/4"))
                .pinned(new Pin.OfJoint(2, in("20"), in("1/2"))));

        assertThat(run(layout, 2).joint()).get().satisfies(
                joint -> assertThat(joint).isEqualByComparingTo(new LengthRatio(in("1/2"), 1)));
        assertThat(run(layout, 1).joint()).isNotEqualTo(run(layout, 2).joint());
        assertThat(layout.unfillable()).isEmpty();
    }

    @Test
    void pinThatCannotBeKeptLeavesItsRunUnfilledAndTheRestIsLaid() {
        WallLayout layout = lay(wall("144 1/2").courses(3).pinned(new Pin.OfPiece(2, in("60"), in("3"))));

        assertThat(layout.unfillable()).singleElement().satisfies(run -> {
            assertThat(run.course()).isEqualTo(2);
            assertThat(run.reason()).isEqualTo(new UnfillableReason.PinNotKept());
        });
        assertThat(layout.courses()).extracting(course -> course.runs().size()).containsExactly(1, 0, 1);
    }

    @Test
    void jointOutsideTheRuleAndPinsThatContradictCannotBeKept() {
        WallBuilder wide = wall("144 1/2").courses(1).pinned(new Pin.OfJoint(1, in("20"), in("1")));
        WallBuilder two = wall("144 1/2").courses(1).pinned(new Pin.OfJoint(1, in("20"), in("1/2")))
                .pinned(new Pin.OfJoint(1, in("90"), in("5/8")));
        WallBuilder both = wall("144 1/2").courses(1).pinned(new Pin.OfPiece(1, in("20"), in("14")))
                .pinned(new Pin.OfPiece(1, in("20"), in("7")));

        for (WallBuilder wall : List.of(wide, two, both)) {
            assertThat(lay(wall).unfillable()).extracting(UnfillableRun::reason)
                    .containsExactly(new UnfillableReason.PinNotKept());
        }
    }

    @Test
    void pinThatLiesInNoRunIsLeftAside() {
        WallBuilder wall = wall("144 1/2").courses(2);
        WallLayout free = lay(wall);

        assertThat(lay(wall.pinned(new Pin.OfPiece(7, in("60"), in("7"))))).isEqualTo(free);
    }

    /** Against trying everything: pins are kept where they can be, no other layout is better, bounds hold. */
    @Test
    void pinnedLayoutsAreAsGoodAsAny() {
        Random random = new Random(8);
        int proven = 0;
        int unkept = 0;
        for (int index = 0; index < 120; index++) {
            WallBuilder wall = pinned(random);
            WallLayout layout = lay(wall);
            ExhaustiveLayout everything = new ExhaustiveLayout(wall.build());
            assertThat(layout.unfillable()).as("wall %s", index).noneMatch(everything::fills);
            unkept += layout.unfillable().size();
            Cost least = everything.least(layout);
            Cost found = new Cost(layout.lapViolations() + layout.straightJoints(), layout.cutPieces());
            assertThat(least).as("wall %s", index).isLessThanOrEqualTo(found);
            if (layout.optimal()) {
                proven++;
                assertThat(found).as("wall %s", index).isEqualTo(least);
            }
            if (least.violations() == found.violations()) {
                assertThat(layout.lowerBound()).as("wall %s", index).isLessThanOrEqualTo(least.cuts());
            }
        }
        assertThat(proven).isGreaterThan(50);
        assertThat(unkept).isPositive();
    }

    private static WallBuilder pinned(Random random) {
        Length length = in("1/2").times(60 + random.nextInt(30));
        List<Length> specials = random.nextInt(3) == 0 ? List.of(in("6 3/4")) : List.of();
        WallBuilder wall = wall(length).courses(2 + random.nextInt(2))
                .stocked(new PieceStock(in("14"), specials, in("5"), in("3"), in("1/8")))
                .start(random.nextInt(3) == 0 ? new WallEnd.Tied() : new WallEnd.Free());
        for (int pins = random.nextInt(2); pins >= 0; pins--) {
            int course = 1 + random.nextInt(2);
            Length at = in("1/8").times(random.nextInt(240));
            wall.pinned(random.nextInt(3) == 0
                    ? new Pin.OfJoint(course, at, in(List.of("1/2", "3/8", "5/8").get(random.nextInt(3))))
                    : new Pin.OfPiece(course, at, in(List.of("14", "6", "9", "12").get(random.nextInt(4)))));
        }
        return wall;
    }
}
