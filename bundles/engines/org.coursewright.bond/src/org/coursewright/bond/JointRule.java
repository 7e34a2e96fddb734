package org.coursewright.bond;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * What the head joints of a wall must keep.
 *
 * @param leastLap least gap between the edges of head joints in consecutive courses
 * @param least narrowest head joint
 * @param nominal head joint aimed at
 * @param most widest head joint
 */
public record JointRule(Length leastLap, Length least, Length nominal, Length most) {

    public JointRule {
        Objects.requireNonNull(leastLap, "leastLap");
        Objects.requireNonNull(least, "least");
        Objects.requireNonNull(nominal, "nominal");
        Objects.requireNonNull(most, "most");
    }
}
