package org.coursewright.layout.ui.plan.shape;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * A way in plan.
 *
 * @param east how far east, negative for west
 * @param north how far north, negative for south
 */
public record PlanVector(Length east, Length north) {

    /** No way at all. */
    public static final PlanVector NONE = new PlanVector(Length.ZERO, Length.ZERO);

    public PlanVector {
        Objects.requireNonNull(east, "east");
        Objects.requireNonNull(north, "north");
    }

    /** @return how long it is, to the nearest 1/320 mm */
    public Length length() {
        return Length.ofUnits(Math.round(Math.hypot(east.units(), north.units())));
    }

    /** @return whether it leads nowhere */
    public boolean isNone() {
        return east.signum() == 0 && north.signum() == 0;
    }

    /**
     * @param other way
     * @return both, one after the other
     */
    public PlanVector plus(PlanVector other) {
        return new PlanVector(east.plus(other.east), north.plus(other.north));
    }

    /** @return the way back */
    public PlanVector reversed() {
        return new PlanVector(east.negated(), north.negated());
    }
}
