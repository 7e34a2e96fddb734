package org.coursewright.bond.internal.stack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;

import org.coursewright.bond.Obstacle;
import org.coursewright.bond.Piece;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.lap.LapCheck;
import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.PieceSet;
import org.coursewright.bond.internal.run.RunFinder;
import org.coursewright.bond.internal.run.RunShape;
import org.junit.jupiter.api.Test;

/** Sets of pieces looked at many at once, against every order of every set for itself. */
class PairFitTest {

    private static final int MOST_SETS = 300;
    private static final long STEPS = 1_000_000;

    /** Two courses; in the upper one an opening leaves a shorter run, somewhere on the lower one. */
    private static RunStack stack(Random random) {
        WallFace wall = wall(36 + random.nextInt(40) + " " + random.nextInt(4) + "/4")
                .stocked(stock("14", "10")).ruled(rule("3 1/2", "3/8", "1/2", "3/4")).courses(2)
                .obstacle(Obstacle.Kind.OPENING, in("0"), in(3 + random.nextInt(16) + " 1/4"), 2, 2).build();
        return new RunStack(Masonry.of(wall.stock(), wall.rule()),
                new RunFinder(wall, new Handing(List.of(), Map.of())).find());
    }

    private static List<Pattern> orders(RunShape shape, Masonry masonry, PieceSet set) {
        List<Pattern> all = new ArrayList<>();
        List<Long> left = new ArrayList<>();
        for (int whole = 0; whole < set.wholes(); whole++) {
            left.add(masonry.whole());
        }
        for (int special = 0; special < set.specials().length; special++) {
            for (int count = 0; count < set.specials()[special]; count++) {
                left.add(masonry.specials().get(special));
            }
        }
        for (long cut : set.cuts()) {
            left.add(cut);
        }
        order(left, new ArrayList<>(), pieces -> all.add(new Pattern(shape, masonry, pieces, kinds(pieces.length),
                set.jointTotal())));
        return all;
    }

    /** What the pieces come from does not matter to laps. */
    private static Piece.Kind[] kinds(int pieces) {
        Piece.Kind[] kinds = new Piece.Kind[pieces];
        Arrays.fill(kinds, Piece.Kind.CUT);
        return kinds;
    }

    private static void order(List<Long> left, List<Long> laid, Consumer<long[]> each) {
        if (left.isEmpty()) {
            each.accept(laid.stream().mapToLong(Long::longValue).toArray());
        }
        for (long length : left.stream().distinct().toList()) {
            List<Long> rest = new ArrayList<>(left);
            rest.remove(length);
            laid.add(length);
            order(rest, laid, each);
            laid.remove(laid.size() - 1);
        }
    }

    private static boolean anyFits(RunStack stack, RunStack.Contact contact, List<PieceSet> lower,
            List<PieceSet> upper) {
        RunShape below = stack.pool(contact.below()).shape();
        RunShape above = stack.pool(contact.above()).shape();
        List<Pattern> uppers = upper.stream().flatMap(set -> orders(above, stack.masonry(), set).stream()).toList();
        return lower.stream().flatMap(set -> orders(below, stack.masonry(), set).stream())
                .anyMatch(one -> uppers.stream().anyMatch(
                        other -> LapCheck.violations(one, other, contact.offset(), stack.masonry().lap()) == 0));
    }

    @Test
    void manySetsFitExactlyIfSomeOrdersOfSomeOfThemDo() {
        Random random = new Random(7);
        int fitting = 0;
        int compared = 0;
        while (compared < 400) {
            RunStack stack = stack(random);
            for (RunStack.Contact contact : stack.contacts()) {
                PatternPool below = stack.pool(contact.below());
                PatternPool above = stack.pool(contact.above());
                Optional<List<PieceSet>> lower = below.allSets(below.leastCuts() + random.nextInt(2), MOST_SETS);
                Optional<List<PieceSet>> upper = above.allSets(above.leastCuts() + random.nextInt(2), MOST_SETS);
                if (contact.forced() > 0 || lower.isEmpty() || upper.isEmpty()) {
                    continue;
                }
                List<PieceSet> ones = part(lower.get(), random);
                List<PieceSet> others = part(upper.get(), random);
                PairFit fit = new PairFit(stack.masonry(), below, above, contact.offset(), new Windows(),
                        new Windows(), STEPS);
                Optional<List<Pattern>> found = fit.fit(ones, others);

                assertThat(fit.isExhausted() || fit.hasSkipped()).isFalse();
                assertThat(found.isPresent()).isEqualTo(anyFits(stack, contact, ones, others));
                found.ifPresent(patterns -> assertThat(LapCheck.violations(patterns.get(0), patterns.get(1),
                        contact.offset(), stack.masonry().lap())).isZero());
                fitting += found.isPresent() ? 1 : 0;
                compared++;
            }
        }
        assertThat(fitting).isBetween(40, 360);
    }

    /** Sets next to one another, as a choice holds them. */
    private static List<PieceSet> part(List<PieceSet> sets, Random random) {
        int from = random.nextInt(sets.size() + 1);
        return List.copyOf(sets.subList(from, Math.min(sets.size(), from + 1 + random.nextInt(12))));
    }
}
