package org.coursewright.bond.internal.stack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.coursewright.bond.Piece;
import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.pieces.Spread;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.PieceSet;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.measure.Length;

/**
 * Patterns to begin with: whole units throughout, and one, two or more other pieces at the ends of the run and spread
 * over it. Patterns that fit their neighbours better are added later.
 */
final class SeedPatterns {

    private static final int MOST_PER_CUTS = 16;
    private static final int MOST_SETS = 60;
    private static final int PLACES = 5;
    /** Runs no longer than so many units are short. */
    private static final int SHORT = 3;
    private static final int SHORT_CUTS = 3;
    /** So few pieces are put into every order. */
    private static final int PERMUTED = 4;

    private final RunShape shape;
    private final Masonry masonry;

    SeedPatterns(RunShape shape, Masonry masonry) {
        this.shape = shape;
        this.masonry = masonry;
    }

    /** Patterns with the fewest cuts. */
    List<Pattern> fewest(PatternPool pool) {
        return shape.isRaked() ? pool.variants(new Windows(), 0, 0, PLACES) : of(pool, pool.leastCuts());
    }

    /** Patterns with more cuts, which laps may need. */
    List<Pattern> more(PatternPool pool) {
        List<Pattern> more = new ArrayList<>();
        int least = pool.leastCuts();
        for (int cuts = least + 1; !shape.isRaked() && cuts <= mostCuts(least); cuts++) {
            more.addAll(of(pool, cuts));
        }
        return more;
    }

    /** Sets come with the preferred first, and what is preferred does not depend on the order of pieces. */
    private List<Pattern> of(PatternPool pool, int cuts) {
        Set<Pattern> found = new LinkedHashSet<>();
        List<PieceSet> sets = pool.sets(cuts);
        int skip = Math.max(1, sets.size() / MOST_SETS);
        for (int index = 0; index < sets.size() && found.size() < MOST_PER_CUTS; index += skip) {
            found.addAll(orders(sets.get(index)));
        }
        return List.copyOf(found).subList(0, Math.min(MOST_PER_CUTS, found.size()));
    }

    /** In a short run a further cut may be what saves a lap; in a long one there are better places for it. */
    private int mostCuts(int least) {
        return isShort() ? least + SHORT_CUTS : Math.max(least, 1);
    }

    private boolean isShort() {
        return shape.length() <= SHORT * masonry.whole();
    }

    /** Orders of a set: the pieces other than whole units at places spread over the run. */
    private List<Pattern> orders(PieceSet set) {
        List<Piece> odd = odd(set);
        int places = set.wholes() + odd.size();
        List<Pattern> orders = new ArrayList<>();
        if (odd.isEmpty()) {
            orders.add(pattern(set, odd, new int[0]));
        } else if (odd.size() == 1) {
            for (long place : Spread.multiples(0, places - 1L, 1, PLACES)) {
                orders.add(pattern(set, odd, new int[]{(int) place}));
            }
        } else if (isShort() && places <= PERMUTED) {
            permute(set, odd, new int[odd.size()], 0, places, orders);
        } else {
            for (int atStart = 0; atStart <= odd.size(); atStart++) {
                orders.add(pattern(set, odd, places(odd.size(), atStart, places)));
            }
        }
        return orders;
    }

    /** Every choice of different places for the odd pieces. */
    private void permute(PieceSet set, List<Piece> odd, int[] chosen, int index, int places, List<Pattern> orders) {
        if (index == odd.size()) {
            orders.add(pattern(set, odd, chosen));
            return;
        }
        for (int place = 0; place < places; place++) {
            boolean free = true;
            for (int before = 0; before < index; before++) {
                free &= chosen[before] != place;
            }
            if (free) {
                chosen[index] = place;
                permute(set, odd, chosen, index + 1, places, orders);
            }
        }
    }

    private static int[] places(int odd, int atStart, int all) {
        int[] places = new int[odd];
        for (int piece = 0; piece < odd; piece++) {
            places[piece] = piece < atStart ? piece : all - odd + piece;
        }
        return places;
    }

    private List<Piece> odd(PieceSet set) {
        List<Piece> odd = new ArrayList<>();
        for (int kind = 0; kind < set.specials().length; kind++) {
            for (int count = 0; count < set.specials()[kind]; count++) {
                odd.add(piece(masonry.specials().get(kind), Piece.Kind.SPECIAL));
            }
        }
        for (long cut : set.cuts()) {
            odd.add(piece(cut, Piece.Kind.CUT));
        }
        return odd;
    }

    private static Piece piece(long length, Piece.Kind kind) {
        return new Piece(Length.ofUnits(length), kind);
    }

    private Pattern pattern(PieceSet set, List<Piece> odd, int[] places) {
        int count = set.pieces();
        long[] pieces = new long[count];
        Piece.Kind[] kinds = new Piece.Kind[count];
        Arrays.fill(pieces, masonry.whole());
        Arrays.fill(kinds, Piece.Kind.WHOLE);
        for (int piece = 0; piece < places.length; piece++) {
            pieces[places[piece]] = odd.get(piece).length().units();
            kinds[places[piece]] = odd.get(piece).kind();
        }
        return new Pattern(shape, masonry, pieces, kinds, set.jointTotal());
    }
}
