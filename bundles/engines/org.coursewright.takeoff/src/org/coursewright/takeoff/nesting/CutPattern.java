package org.coursewright.takeoff.nesting;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

import org.coursewright.measure.Length;

/**
 * How some units are cut.
 *
 * @param pieces how many pieces of each length come out of one unit
 * @param units how many units are cut like this, at least one
 */
public record CutPattern(SortedMap<Length, Integer> pieces, long units) {

    public CutPattern {
        pieces = Collections.unmodifiableSortedMap(new TreeMap<>(pieces));
    }

    /**
     * @param stock what is cut
     * @return what is left of each unit after pieces and kerfs, zero if the blade takes it all
     */
    public Length offcut(CutStock stock) {
        Length taken = Length.ZERO;
        for (var piece : pieces.entrySet()) {
            taken = taken.plus(stock.sizeOf(piece.getKey()).times(piece.getValue()));
        }
        Length left = stock.length().minus(stock.endTrimmed() ? stock.kerf() : Length.ZERO).minus(taken);
        return left.signum() > 0 ? left : Length.ZERO;
    }
}
