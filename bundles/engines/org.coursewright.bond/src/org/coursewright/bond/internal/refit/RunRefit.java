package org.coursewright.bond.internal.refit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.coursewright.bond.Piece;
import org.coursewright.bond.internal.choice.WallCost;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.Preference;
import org.coursewright.bond.internal.run.RunShape;

/**
 * Ways to fill a run that has become a little longer or shorter, near to how it was filled: the same pieces with other
 * joints, one of them cut, cut otherwise, left out, or made whole, or one more; and some with the fewest cuts. Few and
 * quickly found, not all there are.
 */
final class RunRefit {

    private static final long[] NOTHING = {};
    private static final Piece.Kind[] NO_KINDS = {};

    /** So many of the cheapest are kept of those near to how the run was filled, of those with the fewest cuts, and of others of these. */
    private static final int MOST_NEAR = 8;
    private static final int MOST_FEW = 5;
    private static final int MOST_VARIED = 3;

    /** Pieces in order that fill the run; cheaper to have many of than patterns. */
    private record Order(long[] pieces, long jointTotal, long cost) {
    }

    /** How long pieces are together, how many of them are cut, and what is to be said for them by {@link Preference}. */
    private record Sum(long length, int cuts, int preference) {

        Sum plus(Sum other) {
            return new Sum(length + other.length, cuts + other.cuts, preference + other.preference);
        }

        Sum minus(Sum other) {
            return new Sum(length - other.length, cuts - other.cuts, preference - other.preference);
        }
    }

    private final RunShape shape;
    private final Masonry masonry;
    private final Optional<Pattern> before;
    private final long[] specials;
    private final Collection<long[]> fewest;
    private final List<Order> found = new ArrayList<>();

    /**
     * @param before how a run of the same ends but another length was filled, empty if it was not
     * @param shape the run now, without rake
     * @param fewest pieces in order that fill it with the fewest cuts
     */
    RunRefit(Optional<Pattern> before, RunShape shape, Masonry masonry, Collection<long[]> fewest) {
        this.before = before;
        this.shape = shape;
        this.masonry = masonry;
        this.fewest = fewest;
        specials = masonry.specials().stream().mapToLong(Long::longValue).toArray();
    }

    /** @return those near to how it was filled and those with the fewest cuts; none if there are neither */
    List<Pattern> patterns() {
        before.map(Pattern::pieces).ifPresent(this::addNear);
        Set<Pattern> patterns = new LinkedHashSet<>(cheapest(MOST_NEAR));
        found.clear();
        fewest.forEach(order -> add(order, sum(order)));
        patterns.addAll(cheapest(MOST_FEW));
        vary();
        patterns.addAll(first(MOST_VARIED));
        return List.copyOf(patterns);
    }

    /**
     * Puts first one order of every set of pieces, then a second one of each, the cheapest set first: sets lap with one another
     * better than a set does with itself.
     */
    private void vary() {
        found.sort(Comparator.comparingLong(Order::cost).thenComparingLong(Order::jointTotal)
                .thenComparingInt(this::unevenness));
        List<Order> varied = new ArrayList<>();
        for (int round = 0; varied.size() < found.size(); round++) {
            for (int index = 0; index < found.size(); index++) {
                boolean same = index >= round && isAlike(found.get(index), found.get(index - round));
                boolean more = index > round && isAlike(found.get(index), found.get(index - round - 1));
                if (same && !more) {
                    varied.add(found.get(index));
                }
            }
        }
        found.clear();
        found.addAll(varied);
    }

    private static boolean isAlike(Order one, Order other) {
        return one.cost() == other.cost() && one.jointTotal() == other.jointTotal();
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

    private void addNear(long[] pieces) {
        Sum sum = sum(pieces);
        add(pieces, sum);
        for (int place = 0; place < pieces.length; place++) {
            if (place < 2 || place >= pieces.length - 2 || pieces[place] != masonry.whole()) {
                replace(pieces, place, sum);
                insert(pieces, place, sum);
            }
        }
        insert(pieces, pieces.length, sum);
    }

    private List<Pattern> cheapest(int most) {
        found.sort(Comparator.comparingLong(Order::cost));
        return first(most);
    }

    private List<Pattern> first(int most) {
        List<Pattern> patterns = new ArrayList<>();
        for (int index = 0; index < found.size() && patterns.size() < most; index++) {
            Order order = found.get(index);
            Pattern pattern = new Pattern(shape, masonry, order.pieces(), kinds(order.pieces()), order.jointTotal());
            if (shape.pins().isEmpty() || shape.pins().areKept(shape, pattern)) {
                patterns.add(pattern);
            }
        }
        return patterns;
    }

    private void replace(long[] pieces, int place, Sum sum) {
        long[] changed = pieces.clone();
        Sum others = sum.minus(piece(pieces[place]));
        for (long length : lengths(others.length(), pieces.length)) {
            changed[place] = length;
            addIfCut(changed, others, length);
        }
        if (pieces.length > 1) {
            long[] fewer = new long[pieces.length - 1];
            System.arraycopy(pieces, 0, fewer, 0, place);
            System.arraycopy(pieces, place + 1, fewer, place, fewer.length - place);
            add(fewer, others);
        }
    }

    private void insert(long[] pieces, int place, Sum sum) {
        long[] more = new long[pieces.length + 1];
        System.arraycopy(pieces, 0, more, 0, place);
        System.arraycopy(pieces, place, more, place + 1, pieces.length - place);
        for (long length : lengths(sum.length(), more.length)) {
            more[place] = length;
            addIfCut(more, sum, length);
        }
    }

    /** Lengths that one piece may have while the others stay: whole, special, and cut so that joints are usual or as before. */
    private long[] lengths(long others, int count) {
        long rest = shape.length() - others;
        int joints = joints(count);
        int kinds = specials.length;
        long[] lengths = Arrays.copyOf(specials, kinds + 5);
        lengths[kinds] = masonry.whole();
        lengths[kinds + 1] = onStep(rest - joints * masonry.nominal());
        lengths[kinds + 2] = onStep(rest - joints * masonry.least());
        lengths[kinds + 3] = onStep(rest - joints * masonry.most() + masonry.cutStep() - 1);
        lengths[kinds + 4] = onStep(rest - before.filter(pattern -> pattern.joints() > 0)
                .map(pattern -> joints * pattern.jointTotal() / pattern.joints()).orElse(joints * masonry.nominal()));
        return lengths;
    }

    private Sum sum(long[] pieces) {
        Sum sum = new Sum(0, 0, 0);
        for (long piece : pieces) {
            sum = piece == masonry.whole()
                    ? new Sum(sum.length() + piece, sum.cuts(), sum.preference())
                    : sum.plus(piece(piece));
        }
        return sum;
    }

    private Sum piece(long length) {
        Piece.Kind kind = kind(length);
        int preference = Preference.of(masonry, new long[]{length}, new Piece.Kind[]{kind}, 0, 0);
        return new Sum(length, kind == Piece.Kind.CUT ? 1 : 0, preference);
    }

    private Piece.Kind[] kinds(long[] pieces) {
        Piece.Kind[] kinds = new Piece.Kind[pieces.length];
        Arrays.setAll(kinds, piece -> kind(pieces[piece]));
        return kinds;
    }

    private long onStep(long length) {
        return Math.floorDiv(length, masonry.cutStep()) * masonry.cutStep();
    }

    private int joints(int pieces) {
        return pieces - 1 + shape.startJoints() + shape.endJoints();
    }

    /** Adds pieces of which one is of that length, if such a piece is there or can be cut. */
    private void addIfCut(long[] pieces, Sum others, long length) {
        if (kind(length) != Piece.Kind.CUT || masonry.canCut(length)) {
            add(pieces, others.plus(piece(length)));
        }
    }

    private void add(long[] pieces, Sum sum) {
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

    private Piece.Kind kind(long length) {
        if (length == masonry.whole()) {
            return Piece.Kind.WHOLE;
        }
        for (long special : specials) {
            if (length == special) {
                return Piece.Kind.SPECIAL;
            }
        }
        return Piece.Kind.CUT;
    }
}
