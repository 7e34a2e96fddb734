package org.coursewright.core.cost;

import java.math.BigDecimal;
import java.util.Objects;

import org.coursewright.measure.Length;
import org.coursewright.measure.Money;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.nesting.CutStock;

/**
 * What units of a type and cutting them cost by the rates of a project, for weighing one layout against another.
 *
 * @param unit direct cost of a whole unit, bought or pressed
 * @param laying direct cost of laying one piece at plain height, without learning
 * @param cut direct cost of one cut: people and saw
 * @param layingMinutes that people work to lay one piece
 * @param cutMinutes that people work on one cut
 */
public record PieceCosts(Money unit, Money laying, Money cut, BigDecimal layingMinutes, BigDecimal cutMinutes) {

    public PieceCosts {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(laying, "laying");
        Objects.requireNonNull(cut, "cut");
        Objects.requireNonNull(layingMinutes, "layingMinutes");
        Objects.requireNonNull(cutMinutes, "cutMinutes");
    }

    /**
     * The cost of one cut piece. Several pieces come out of one unit, so each is charged the part that it and its kerf take.
     *
     * @param piece its length, greater than zero, at most {@code face}
     * @param face length of the unit along the wall
     * @param kerf of the saw, zero or more
     * @return its cost, its part of a unit, and the minutes that it takes
     * @throws IllegalArgumentException if the piece cannot be cut from the unit
     */
    public CutPieceCost ofPiece(Length piece, Length face, Length kerf) {
        CutStock stock = new CutStock(face, kerf, false);
        if (piece.signum() <= 0 || stock.sizeOf(piece).isGreaterThan(stock.capacity())) {
            throw new IllegalArgumentException("A piece of %s cannot be cut from a unit of %s.".formatted(piece, face));
        }
        BigDecimal units = Fraction.of(stock.sizeOf(piece).units(), stock.capacity().units()).toDecimal();
        return new CutPieceCost(unit.times(units).plus(cut), units, cutMinutes);
    }
}
