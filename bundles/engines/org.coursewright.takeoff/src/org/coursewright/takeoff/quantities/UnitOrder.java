package org.coursewright.takeoff.quantities;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

import org.coursewright.measure.Length;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.nesting.CutPlan;

/**
 * What is ordered or pressed of one unit type in one bond: pieces laid, units cut up, and breakage on both.
 *
 * @param unit the type
 * @param face the unit's length along the wall: its length in stretcher bond, its width in header bond
 * @param laid what is laid of it in each wall
 * @param pieces laid in all of them
 * @param lowPieces how many of the pieces are in courses lower than the unit, so that they are cut along their bed too
 * @param cutting how the cut pieces come out of whole units
 * @param breakage share on top
 */
public record UnitOrder(UnitShape unit, Length face, List<WallPieces> laid, PieceTally pieces, long lowPieces,
        CutPlan cutting, Fraction breakage) {

    public UnitOrder {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(face, "face");
        laid = List.copyOf(laid);
        Objects.requireNonNull(pieces, "pieces");
        Objects.requireNonNull(cutting, "cutting");
        Objects.requireNonNull(breakage, "breakage");
    }

    /** @return marks of the walls it is laid in */
    public List<String> walls() {
        return walls(wall -> true);
    }

    /**
     * @param which walls are of interest
     * @return their marks
     */
    public List<String> walls(Predicate<WallPieces> which) {
        return laid.stream().filter(which).map(WallPieces::wall).toList();
    }

    /** @return whole units that are laid or cut up, without breakage */
    public long consumed() {
        return pieces.whole() + cutting.units();
    }

    /** @return whole units to order: those consumed and the breakage on them, rounded up once */
    public long ordered() {
        return withBreakage(consumed());
    }

    /** @return specials to order by length, each with breakage, rounded up */
    public SortedMap<Length, Long> orderedSpecials() {
        SortedMap<Length, Long> ordered = new TreeMap<>();
        for (Map.Entry<Length, Long> special : pieces.specials().entrySet()) {
            ordered.put(special.getKey(), withBreakage(special.getValue()));
        }
        return Collections.unmodifiableSortedMap(ordered);
    }

    private long withBreakage(long count) {
        return Fraction.of(count).times(Fraction.ONE.plus(breakage)).ceiling();
    }
}
