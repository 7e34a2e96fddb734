package org.coursewright.bond;

/**
 * How a crew lays head joints when nobody tells it to correct them. Replace the presets by measuring twenty of its own.
 *
 * @param mean usual joint (mm), greater than zero
 * @param deviation standard deviation of a joint (mm), zero or more
 * @param likeness correlation between the joints of one run, 0 if each is laid afresh to 1 if a mason's joints are all
 *        alike
 */
public record JointHabit(double mean, double deviation, double likeness) {

    /** @throws InvalidBondRequestException if a value is out of its range */
    public JointHabit {
        if (!(mean > 0) || !(deviation >= 0) || !(likeness >= 0 && likeness <= 1)
                || Double.isInfinite(mean + deviation)) {
            throw new InvalidBondRequestException(
                    "A usual joint of %s mm, spread %s mm, likeness %s makes no sense: the joint must be greater than 0, the spread at least 0, the likeness from 0 to 1."
                            .formatted(mean, deviation, likeness));
        }
    }
}
