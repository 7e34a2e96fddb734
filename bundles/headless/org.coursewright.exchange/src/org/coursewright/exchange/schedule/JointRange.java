package org.coursewright.exchange.schedule;

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
}
