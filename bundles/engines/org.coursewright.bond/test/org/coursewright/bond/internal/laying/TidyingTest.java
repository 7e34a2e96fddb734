package org.coursewright.bond.internal.laying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.Piece;
import org.coursewright.bond.RandomWalls;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.lap.LapCheck;
import org.coursewright.bond.internal.proof.CutProof;
import org.coursewright.bond.internal.proof.Prover;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunFinder;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** What is weighed once laps and cuts are settled, by hand and on random walls. */
class TidyingTest {

    private static final Handing NONE = new Handing(List.of(), Map.of());

    private static RunStack stack(WallFace wall) {
        return new RunStack(Masonry.of(wall.stock(), wall.rule()), new RunFinder(wall, NONE).find());
    }

    private static Pattern pattern(RunStack stack, int run, String jointTotal, String... cuts) {
        long[] pieces = new long[cuts.length];
        Piece.Kind[] kinds = new Piece.Kind[cuts.length];
        for (int piece = 0; piece < cuts.length; piece++) {
            pieces[piece] = in(cuts[piece]).units();
            kinds[piece] = pieces[piece] == stack.masonry().whole() ? Piece.Kind.WHOLE : Piece.Kind.CUT;
        }
        return new Pattern(stack.pool(run).shape(), stack.masonry(), pieces, kinds, in(jointTotal).units());
    }

    private static WallFace piers() {
        return wall("120").stocked(stock("14")).ruled(rule("3 1/2", "3/8", "1/2", "3/4")).courses(1)
                .obstacle(Obstacle.Kind.OPENING, in("38 1/2"), in("81"), 1, 1).build();
    }

    /** 10 in and 9 in each leave too little of 14 in for the other; 4 in goes beside 9 in, the saw takes 1/8 in. */
    @Test
    void longestCutSharesABlockWithTheShortestThatFits() {
        RunStack stack = stack(piers());
        List<Pattern> patterns = List.of(pattern(stack, 0, "1 1/2", "10", "14", "9", "4"));

        assertThat(Tidiness.of(stack.masonry(), patterns)).extracting(Tidiness::blocks, Tidiness::cutLengths)
                .containsExactly(2L, 3L);
    }

    /** Piers of 38 1/2 in and 39 in: 9 1/2 in and 10 in with joints of 1/2 in beside two units; 9 1/2 in with 3/4 in. */
    @Test
    void piersAreCutToOneLengthWhereTheJointsAllowIt() {
        RunStack stack = stack(piers());
        stack.seed();
        List<Pattern> tidied = new Tidying(stack,
                List.of(pattern(stack, 0, "1", "9 1/2", "14", "14"), pattern(stack, 1, "1", "10", "14", "14")))
                .tidy(Progress.NONE);

        assertThat(Tidiness.of(stack.masonry(), tidied).cutLengths()).isEqualTo(1);
        assertThat(tidied).allSatisfy(pattern -> assertThat(pattern.cuts()).isEqualTo(1));
    }

    @Test
    void tidyingKeepsCutsAndLapsAndBettersTheRest() {
        RandomWalls walls = new RandomWalls(11);
        int bettered = 0;
        for (int index = 0; index < 25; index++) {
            BondRequest request = walls.wall("100", "300", 10, 2);
            RunStack stack = stack(request.walls().get(0));
            List<Pattern> laid = new StackLayout(stack, new NothingProven(), Progress.NONE)
                    .laySoon();
            List<Pattern> tidied = new Tidying(stack, laid).tidy(Progress.NONE);

            assertThat(cost(stack, tidied)).isEqualTo(cost(stack, laid));
            int order = Tidiness.of(stack.masonry(), tidied).compareTo(Tidiness.of(stack.masonry(), laid));
            assertThat(order).isNotPositive();
            bettered += order < 0 ? 1 : 0;
        }
        assertThat(bettered).isGreaterThan(5);
    }

    private static List<Integer> cost(RunStack stack, List<Pattern> patterns) {
        List<Integer> cost = new ArrayList<>();
        cost.add(patterns.stream().mapToInt(Pattern::cuts).sum());
        cost.add(stack.contacts().stream().mapToInt(contact -> LapCheck.violations(patterns.get(contact.below()),
                patterns.get(contact.above()), contact.offset(), stack.masonry().lap())).sum());
        return cost;
    }

    private static final class NothingProven implements Prover {

        @Override
        public CutProof prove() {
            return new CutProof(0, List.of(), Map.of());
        }

        @Override
        public CutProof refine(int wanted) {
            return prove();
        }

        @Override
        public CutProof vary() {
            return prove();
        }
    }
}
