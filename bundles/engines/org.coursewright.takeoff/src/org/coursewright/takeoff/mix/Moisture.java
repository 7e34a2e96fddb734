package org.coursewright.takeoff.mix;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import org.coursewright.takeoff.Fraction;

/**
 * Water in an ingredient as it lies, and what that does to its volume.
 *
 * @param content mass of water by dry mass, zero or more
 * @param absorbed the part of it that the particles take in, which is no mixing water, by dry mass; zero or more, and more
 *        than {@code content} if they are thirsty
 * @param bulking share by which the loose volume is larger than dry, zero or more; damp sand swells by up to about 0.3
 *        (common practice, no source)
 */
public record Moisture(Fraction content, Fraction absorbed, Fraction bulking) {

    /** Dry, and taking in nothing. */
    public static final Moisture DRY = new Moisture(Fraction.ZERO, Fraction.ZERO, Fraction.ZERO);

    public Moisture {
        require(content.signum() >= 0 && absorbed.signum() >= 0 && bulking.signum() >= 0,
                "Moisture %s, absorption %s and bulking %s: none may be negative.", content.toDecimal(), absorbed
                        .toDecimal(),
                bulking.toDecimal());
    }

    /** @return mixing water it brings by dry mass; negative if it takes some */
    public Fraction free() {
        return content.minus(absorbed);
    }
}
