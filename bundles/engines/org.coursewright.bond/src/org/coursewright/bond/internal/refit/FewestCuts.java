package org.coursewright.bond.internal.refit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

import org.coursewright.bond.internal.pieces.PieceSets;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.PieceSet;
import org.coursewright.bond.internal.run.Preference;
import org.coursewright.bond.internal.run.RunShape;

/** Some orders of pieces that fill a level run with the fewest cuts: those that are not whole near its ends. */
final class FewestCuts {

    private static final int SPECIALS = 4;
    private static final int SETS = 4;

    private final RunShape shape;
    private final Masonry masonry;

    FewestCuts(RunShape shape, Masonry masonry) {
        this.shape = shape;
        this.masonry = masonry;
    }

    /** @return pieces in order; none if nothing fills the run */
    List<long[]> orders() {
        PieceSets sets = new PieceSets(shape, masonry);
        OptionalInt least = sets.leastCuts();
        List<long[]> orders = new ArrayList<>();
        if (least.isPresent()) {
            sets.withCuts(least.getAsInt(), SPECIALS).stream()
                    .sorted(Comparator.comparingInt(set -> Preference.of(masonry, set))).limit(SETS)
                    .forEach(set -> addOrders(odd(set), set.pieces(), orders));
        }
        return orders;
    }

    private long[] odd(PieceSet set) {
        long[] odd = Arrays.copyOf(set.cuts(), set.cuts().length + set.specialCount());
        int next = set.cuts().length;
        for (int kind = 0; kind < set.specials().length; kind++) {
            Arrays.fill(odd, next, next + set.specials()[kind], masonry.specials().get(kind));
            next += set.specials()[kind];
        }
        return odd;
    }

    /** One odd piece at either end or next to it; more of them shared out between the ends. */
    private void addOrders(long[] odd, int count, List<long[]> orders) {
        if (odd.length == 1) {
            Set<Integer> places = new TreeSet<>(List.of(0, Math.min(1, count - 1), Math.max(0, count - 2), count - 1));
            for (int place : places) {
                long[] order = wholes(count);
                order[place] = odd[0];
                orders.add(order);
            }
            return;
        }
        for (int atStart = 0; atStart <= odd.length; atStart++) {
            long[] order = wholes(count);
            System.arraycopy(odd, 0, order, 0, atStart);
            System.arraycopy(odd, atStart, order, count - odd.length + atStart, odd.length - atStart);
            orders.add(order);
        }
    }

    private long[] wholes(int count) {
        long[] order = new long[count];
        Arrays.fill(order, masonry.whole());
        return order;
    }
}
