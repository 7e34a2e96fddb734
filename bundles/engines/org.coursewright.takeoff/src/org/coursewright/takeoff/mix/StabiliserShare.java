package org.coursewright.takeoff.mix;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Objects;

import org.coursewright.takeoff.Fraction;

/**
 * How much stabiliser soil is given, by dry mass. Both conventions are in use and differ: 5 % of soil is 4.76 % of the total.
 *
 * @param share zero or more; less than 1 if of the total
 * @param convention what it is a share of
 */
public record StabiliserShare(Fraction share, Convention convention) {

    /** What a share of stabiliser is taken of. */
    public enum Convention {
        /** Dry mass of the soil alone. */
        OF_SOIL,
        /** Dry mass of soil and stabiliser. */
        OF_TOTAL
    }

    public StabiliserShare {
        Objects.requireNonNull(convention, "convention");
        require(share.signum() >= 0, "The share of stabiliser is %s: it must not be negative.", share.toDecimal());
        require(convention == Convention.OF_SOIL || share.compareTo(Fraction.ONE) < 0,
                "The share of stabiliser is %s of the total: it must be less than 1.", share.toDecimal());
    }

    /** @return the stabiliser in a dry mass of soil and stabiliser, in the same unit */
    public Fraction in(Fraction total) {
        return total.times(ofTotal());
    }

    /** @return the same share by the other convention's or its own: of the total */
    public Fraction ofTotal() {
        return convention == Convention.OF_TOTAL ? share : share.dividedBy(Fraction.ONE.plus(share));
    }
}
