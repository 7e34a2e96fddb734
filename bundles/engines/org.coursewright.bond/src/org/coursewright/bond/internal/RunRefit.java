package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.coursewright.bond.Piece;

/**
 * Ways to fill a run that has become a little longer or shorter, near to how it was filled: the same pieces with other
 * joints, one of them cut, cut otherwise, left out, or made whole, or one more; and some with the fewest cuts. Few and
 * quickly found, not all there are.
 */
final class RunRefit {

    /** So many of the cheapest are kept of those near to how the run was filled, and of those with the fewest cuts. */
    private static final int MOST_NEAR = 8;
    private static final int MOST_FEW = 5;

    private final RunShape shape;
    private final Masonry masonry;
    private final Pattern before;
    private final Set<Pattern> found = new LinkedHashSet<>();

    /**
     * @param before how a run of the same ends but another length was filled
     * @param shape the run now, without rake
     */
    RunRefit(Pattern before, RunShape shape, Masonry masonry) {
        this.before = before;
        this.shape = shape;
        this.masonry = masonry;
    }

    /** @return those near to how it was filled and those with the fewest cuts; none if there are neither */
    List<Pattern> patterns() {
        long[] pieces = before.pieces();
        add(pieces);
        for (int place : places(pieces.length)) {
            replace(pieces, place);
            insert(pieces, place);
        }
        insert(pieces, pieces.length);
        Set<Pattern> patterns = new LinkedHashSet<>(cheapest(MOST_NEAR));
        found.clear();
        new FewestCuts(shape, masonry).orders().forEach(this::add);
        patterns.addAll(cheapest(MOST_FEW));
        return List.copyOf(patterns);
    }

    private List<Pattern> cheapest(int most) {
        return found.stream().filter(pattern -> shape.pins().areKept(shape, pattern))
                .sorted(Comparator.comparingLong(Pattern::cost)).limit(most).toList();
    }

    /** Both ends, the places next to them, and wherever a piece is not whole. */
    private Set<Integer> places(int count) {
        Set<Integer> places = new TreeSet<>();
        for (int place = 0; place < count; place++) {
            if (place < 2 || place >= count - 2 || before.pieces()[place] != masonry.whole()) {
                places.add(place);
            }
        }
        return places;
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
    private List<Long> lengths(long[] pieces, int place, int count) {
        long rest = shape.length() + pieces[place] - sum(pieces);
        int joints = joints(count);
        List<Long> lengths = new ArrayList<>(masonry.specials());
        lengths.add(masonry.whole());
        lengths.add(onStep(rest - joints * masonry.nominal()));
        if (before.joints() > 0) {
            lengths.add(onStep(rest - joints * before.jointTotal() / before.joints()));
        }
        lengths.add(onStep(rest - joints * masonry.least()));
        lengths.add(onStep(rest - joints * masonry.most() + masonry.cutStep() - 1));
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
        for (int piece = 0; piece < kinds.length; piece++) {
            if (!isAllowed(pieces[piece])) {
                return;
            }
            kinds[piece] = kind(pieces[piece]);
        }
        found.add(new Pattern(shape, masonry, pieces.clone(), kinds, total));
    }

    private boolean isAllowed(long length) {
        return kind(length) != Piece.Kind.CUT
                || length >= masonry.cutLeast() && length <= masonry.cutMost() && length % masonry.cutStep() == 0;
    }

    private Piece.Kind kind(long length) {
        if (length == masonry.whole()) {
            return Piece.Kind.WHOLE;
        }
        return masonry.specials().contains(length) ? Piece.Kind.SPECIAL : Piece.Kind.CUT;
    }
}
