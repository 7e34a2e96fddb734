package org.coursewright.bond;

import java.util.List;
import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * The pieces a wall may be laid of, measured along the wall.
 *
 * @param whole the whole unit's face: its length in stretcher bond, its width in header bond; greater than zero
 * @param specials lengths stocked besides the whole unit, in any order
 * @param shortestPiece shortest piece that may be cut, greater than zero
 * @param cutStep cut pieces are multiples of this, greater than zero
 * @param kerf what a saw cut takes away, zero or more
 */
public record PieceStock(Length whole, List<Length> specials, Length shortestPiece, Length cutStep, Length kerf) {

    public PieceStock {
        Objects.requireNonNull(whole, "whole");
        Objects.requireNonNull(shortestPiece, "shortestPiece");
        Objects.requireNonNull(cutStep, "cutStep");
        Objects.requireNonNull(kerf, "kerf");
        specials = List.copyOf(specials);
    }
}
