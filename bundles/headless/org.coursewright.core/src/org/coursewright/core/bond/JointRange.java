package org.coursewright.core.bond;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;

/**
 * What a joint may be.
 *
 * @param least narrowest
 * @param nominal aimed at
 * @param most widest
 */
public record JointRange(Length least, Length nominal, Length most) {

    public JointRange {
        if (least.isGreaterThan(nominal) || nominal.isGreaterThan(most)) {
            throw new IllegalArgumentException(
                    "A joint of least %s, nominal %s, most %s must not fall.".formatted(least, nominal, most));
        }
    }

    /**
     * The joint that holds where nobody says otherwise: 3/8, 1/2, 3/4 in or 8, 10, 15 mm (common practice, no source).
     *
     * @param display whose round numbers are used
     * @return that range
     */
    public static JointRange usual(DisplayUnit display) {
        return switch (display) {
            case INCH -> new JointRange(Length.ofInchFraction(3, 8), Length.ofInchFraction(1, 2),
                    Length.ofInchFraction(3, 4));
            case MILLIMETRE -> new JointRange(Length.ofMillimetres(8), Length.ofMillimetres(10),
                    Length.ofMillimetres(15));
        };
    }
}
