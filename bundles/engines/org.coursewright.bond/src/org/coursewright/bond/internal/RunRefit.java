package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.coursewright.bond.Piece;

/**
 * Ways to fill a run that has become a little longer or shorter, near to how it was filled: the same pieces with other
 * joints, one of them cut, cut otherwise, left out, or made whole, or one more; and some with the fewest cuts. Few and
 * quickly found, not all there are.
 */
final class RunRefit {

    /** So many of the cheapest are kept of those near to how the run was filled, of those with the fewest cuts, and of others of these. */
    private static final int MOST_NEAR = 8;
    private static final int MOST_FEW = 5;
    private static final int MOST_VARIED = 3;

    /** Pieces in order that fill the run; cheaper to have many of than patterns. */
    private record Order(long[] pieces, Piece.Kind[] kinds, long jointTotal, long cost) {
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
        fewest.forEach(this::add);
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
        add(pieces);
        for (int place = 0; place < pieces.length; place++) {
            if (place < 2 || place >= pieces.length - 2 || pieces[place] != masonry.whole()) {
                replace(pieces, place);
                insert(pieces, place);
            }
        }
        insert(pieces, pieces.length);
    }

    private List<Pattern> cheapest(int most) {
        found.sort(Comparator.comparingLong(Order::cost));
        return first(most);
    }

    private List<Pattern> first(int most) {
        List<Pattern> patterns = new ArrayList<>();
        for (int index = 0; index < found.size() && patterns.size() < most; index++) {
            Order order = found.get(index);
            Pattern pattern = new Pattern(shape, masonry, order.pieces(), order.kinds(), order.jointTotal());
            if (shape.pins().isEmpty() || shape.pins().areKept(shape, pattern)) {
                patterns.add(pattern);
            }
        }
        return patterns;
    }

    private void replace(long[] pieces, int place) {
        long[] changed = pieces.clone();
        for (long length : lengths(pieces, place, pieces.length)) {
            changed[place] = length;
            add(changed);
        }
        if (pieces.length > 1) {
            long[] fewer = new long[pieces.length - 1];
            System.arraycopy(pieces, 0, fewer, 0, place);
            System.arraycopy(pieces, place + 1, fewer, place, fewer.length - place);
            add(fewer);
        }
    }

    private void insert(long[] pieces, int place) {
        long[] more = new long[pieces.length + 1];
        System.arraycopy(pieces, 0, more, 0, place);
        System.arraycopy(pieces, place, more, place + 1, pieces.length - place);
        for (long length : lengths(more, place, more.length)) {
            more[place] = length;
            add(more);
        }
    }

    /** Lengths that one piece may have while the others stay: whole, special, and cut so that joints are usual or as before. */
    private long[] lengths(long[] pieces, int place, int count) {
        long rest = shape.length() + pieces[place] - sum(pieces);
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

    private static long sum(long[] pieces) {
        long sum = 0;
        for (long piece : pieces) {
            sum += piece;
        }
        return sum;
    }

    private long onStep(long length) {
        return Math.floorDiv(length, masonry.cutStep()) * masonry.cutStep();
    }

    private int joints(int pieces) {
        return pieces - 1 + shape.startJoints() + shape.endJoints();
    }

    private void add(long[] pieces) {
        int joints = joints(pieces.length);
        long total = shape.length() - sum(pieces);
        if (total < joints * masonry.least() || total > joints * masonry.most()) {
            return;
        }
        Piece.Kind[] kinds = new Piece.Kind[pieces.length];
        int cuts = 0;
        for (int piece = 0; piece < kinds.length; piece++) {
            kinds[piece] = kind(pieces[piece]);
            if (kinds[piece] == Piece.Kind.CUT) {
                cuts++;
                if (!masonry.canCut(pieces[piece])) {
                    return;
                }
            }
        }
        long cost = CostNetwork.cost(0, cuts, Preference.of(masonry, pieces, kinds, joints, total));
        if (!isFound(pieces, cost)) {
            found.add(new Order(pieces.clone(), kinds, total, cost));
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
