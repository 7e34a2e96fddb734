package org.coursewright.takeoff.mix;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import org.coursewright.measure.Length;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Volume;

/** Rules of the trade for mortar, each with its source; for checking a mix, not for making one. */
public final class MortarRules {

    /** Loose dry materials by mortar made: 38 cubic feet make 27 (US Navy Builder course, "rule 38"). */
    private static final Fraction LOOSE_BY_MORTAR = Fraction.of(38, 27);

    private static final Fraction LEAST_SAND = Fraction.of(9, 4);
    private static final Fraction MOST_SAND = Fraction.of(3);

    /** What a rule allows, both ends included. */
    public record Range(Fraction least, Fraction most) {

        /** @return whether a value is allowed */
        public boolean contains(Fraction value) {
            return least.compareTo(value) <= 0 && value.compareTo(most) <= 0;
        }
    }

    private MortarRules() {
    }

    /**
     * Sand of a cement–lime mortar by ASTM C270, proportion specification (from memory): 2 1/4 to 3 times the loose volumes
     * of cement and lime together, measured damp and loose.
     *
     * @param cementitious parts of cement and lime together, by loose volume, greater than zero
     * @return parts of sand
     */
    public static Range sand(Fraction cementitious) {
        require(cementitious.signum() > 0, "%s parts of cement and lime: give more than zero.", cementitious
                .toDecimal());
        return new Range(cementitious.times(LEAST_SAND), cementitious.times(MOST_SAND));
    }

    /**
     * Loose dry materials by rule 38.
     *
     * @param mortar volume of mortar
     * @return volume of all dry materials together, loose
     */
    public static Volume looseMaterials(Volume mortar) {
        return mortar.times(LOOSE_BY_MORTAR);
    }

    /**
     * Thinnest joint for sand of a given grain: twice the largest particle (published notes on mud mortar: 5 to 8 mm of
     * grain need 10 to 15 mm of joint).
     *
     * @param largestParticle of the sand or soil, zero or more
     * @return the thinnest joint
     */
    public static Length thinnestJoint(Length largestParticle) {
        return largestParticle.times(2);
    }

    /** @return whether a joint is thick enough for the largest particle, see {@link #thinnestJoint} */
    public static boolean fits(Length largestParticle, Length joint) {
        return !joint.isLessThan(thinnestJoint(largestParticle));
    }
}
