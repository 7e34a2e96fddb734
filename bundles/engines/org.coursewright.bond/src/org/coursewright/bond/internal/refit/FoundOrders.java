package org.coursewright.bond.internal.refit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import org.coursewright.bond.Piece;
import org.coursewright.bond.internal.choice.WallCost;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.Preference;
import org.coursewright.bond.internal.run.RunShape;

/** Orders of pieces found for a run, each once, of which few become patterns. */
final class FoundOrders {

    private static final long[] NOTHING = {};
    private static final Piece.Kind[] NO_KINDS = {};

    /** Pieces in order that fill the run; cheaper to have many of than patterns. */
    private record Order(long[] pieces, long jointTotal, long cost) {

        boolean isAlike(Order other) {
            return cost == other.cost && jointTotal == other.jointTotal;
        }
    }

    private final RunShape shape;
    private final Masonry masonry;
    private final PieceKinds kinds;
    private final List<Order> found = new ArrayList<>();

    FoundOrders(RunShape shape, Masonry masonry, PieceKinds kinds) {
        this.shape = shape;
        this.masonry = masonry;
        this.kinds = kinds;
    }

    /** Adds pieces if they fill the run with joints in range. */
    void add(long[] pieces, PieceKinds.Sum sum) {
        int joints = joints(pieces.length);
        long total = shape.length() - sum.length();
        if (total < joints * masonry.least() || total > joints * masonry.most()) {
            return;
        }
        int uneven = Preference.of(masonry, NOTHING, NO_KINDS, joints, total);
        long cost = WallCost.of(0, sum.cuts(), Math.min(WallCost.MOST_PREFERENCE, sum.preference() + uneven));
        if (!isFound(pieces, cost)) {
            found.add(new Order(pieces.clone(), total, cost));
        }
    }

    private boolean isFound(long[] pieces, long cost) {
        for (Order order : found) {
            if (order.cost() == cost && Arrays.equals(order.pieces(), pieces)) {
                return true;
            }
        }
        return false;
    }

    /** Joints of the run with so many pieces. */
    int joints(int pieces) {
        return pieces - 1 + shape.startJoints() + shape.endJoints();
    }

    List<Pattern> cheapest(int most) {
        found.sort(Comparator.comparingLong(Order::cost));
        return first(found, most);
    }

    /**
     * One order of every set of pieces, then a second one of each, the cheapest set first: sets lap with one another better
     * than a set does with itself.
     */
    List<Pattern> varied(int most) {
        found.sort(Comparator.comparingLong(Order::cost).thenComparingLong(Order::jointTotal)
                .thenComparingInt(this::unevenness));
        List<Order> varied = new ArrayList<>();
        for (int round = 0; varied.size() < found.size(); round++) {
            for (int index = 0; index < found.size(); index++) {
                boolean same = index >= round && found.get(index).isAlike(found.get(index - round));
                boolean more = index > round && found.get(index).isAlike(found.get(index - round - 1));
                if (same && !more) {
                    varied.add(found.get(index));
                }
            }
        }
        return first(varied, most);
    }

    /** By how many pieces that are not whole the halves of the run differ. */
    private int unevenness(Order order) {
        int difference = 0;
        for (int piece = 0; piece < order.pieces().length; piece++) {
            if (order.pieces()[piece] != masonry.whole()) {
                difference += 2 * piece < order.pieces().length ? 1 : -1;
            }
        }
        return Math.abs(difference);
    }

    private List<Pattern> first(List<Order> orders, int most) {
        List<Pattern> patterns = new ArrayList<>();
        for (int index = 0; index < orders.size() && patterns.size() < most; index++) {
            Order order = orders.get(index);
            Pattern pattern = new Pattern(shape, masonry, order.pieces(), kinds.kinds(order.pieces()),
                    order.jointTotal());
            if (shape.pins().isEmpty() || shape.pins().areKept(shape, pattern)) {
                patterns.add(pattern);
            }
        }
        return patterns;
    }
}
