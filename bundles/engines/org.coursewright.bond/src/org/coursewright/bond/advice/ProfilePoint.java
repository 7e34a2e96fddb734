package org.coursewright.bond.advice;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * What a wall comes to if one of its dimensions takes one value.
 *
 * @param change of the dimension, zero as it is planned
 * @param unfillable runs that nothing fills; at least so many where it is a bound
 * @param lapViolations pairs of joints that lap too little; at least so many where it is a bound
 * @param cutPieces cut pieces; at least so many where it is a bound
 * @param leastCuts cut pieces that every layout needs, however its joints lap; proven
 * @param basis how the counts are known
 */
public record ProfilePoint(Length change, int unfillable, int lapViolations, int cutPieces, int leastCuts,
        Basis basis) {

    /** How the counts of a point are known. */
    public enum Basis {
        /** The wall has been laid so; laying it again gives the same. */
        LAID,
        /** A layout that comes to this has been fitted from one nearby; laying the wall may find a better one. */
        FITTED,
        /** No layout comes to less; one may come to more. */
        BOUND
    }

    public ProfilePoint {
        Objects.requireNonNull(change, "change");
        Objects.requireNonNull(basis, "basis");
    }
}
