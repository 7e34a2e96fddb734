package org.coursewright.bond.internal.refit;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.coursewright.bond.Piece;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;

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

    private final RunShape shape;
    private final Masonry masonry;
    private final Optional<Pattern> before;
    private final Collection<long[]> fewest;
    private final PieceKinds kinds;
    private final FoundOrders near;

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
        kinds = new PieceKinds(masonry);
        near = new FoundOrders(shape, masonry, kinds);
    }

    /** @return those near to how it was filled and those with the fewest cuts; none if there are neither */
    List<Pattern> patterns() {
        before.map(Pattern::pieces).ifPresent(this::addNear);
        Set<Pattern> patterns = new LinkedHashSet<>(near.cheapest(MOST_NEAR));
        FoundOrders few = new FoundOrders(shape, masonry, kinds);
        fewest.forEach(order -> few.add(order, kinds.sum(order)));
        patterns.addAll(few.cheapest(MOST_FEW));
        patterns.addAll(few.varied(MOST_VARIED));
        return List.copyOf(patterns);
    }

    private void addNear(long[] pieces) {
        PieceKinds.Sum sum = kinds.sum(pieces);
        near.add(pieces, sum);
        for (int place = 0; place < pieces.length; place++) {
            if (place < 2 || place >= pieces.length - 2 || pieces[place] != masonry.whole()) {
                replace(pieces, place, sum);
                insert(pieces, place, sum);
            }
        }
        insert(pieces, pieces.length, sum);
    }

    private void replace(long[] pieces, int place, PieceKinds.Sum sum) {
        long[] changed = pieces.clone();
        PieceKinds.Sum others = sum.minus(kinds.sum(pieces[place]));
        for (long length : lengths(others.length(), pieces.length)) {
            changed[place] = length;
            addIfCut(changed, others, length);
        }
        if (pieces.length > 1) {
            long[] fewer = new long[pieces.length - 1];
            System.arraycopy(pieces, 0, fewer, 0, place);
            System.arraycopy(pieces, place + 1, fewer, place, fewer.length - place);
            near.add(fewer, others);
        }
    }

    private void insert(long[] pieces, int place, PieceKinds.Sum sum) {
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
        int joints = near.joints(count);
        int special = kinds.specials().length;
        long[] lengths = Arrays.copyOf(kinds.specials(), special + 5);
        lengths[special] = masonry.whole();
        lengths[special + 1] = onStep(rest - joints * masonry.nominal());
        lengths[special + 2] = onStep(rest - joints * masonry.least());
        lengths[special + 3] = onStep(rest - joints * masonry.most() + masonry.cutStep() - 1);
        lengths[special + 4] = onStep(rest - before.filter(pattern -> pattern.joints() > 0)
                .map(pattern -> joints * pattern.jointTotal() / pattern.joints()).orElse(joints * masonry.nominal()));
        return lengths;
    }

    private long onStep(long length) {
        return Math.floorDiv(length, masonry.cutStep()) * masonry.cutStep();
    }

    /** Adds pieces of which one is of that length, if such a piece is there or can be cut. */
    private void addIfCut(long[] pieces, PieceKinds.Sum others, long length) {
        if (kinds.kind(length) != Piece.Kind.CUT || masonry.canCut(length)) {
            near.add(pieces, others.plus(kinds.sum(length)));
        }
    }
}
