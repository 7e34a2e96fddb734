package org.coursewright.diagram.ui.scale;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;

/**
 * What lengths are rounded to that a mouse is dragged over.
 *
 * @param step greater than zero
 */
public record LengthStep(Length step) {

    private static final LengthStep INCHES = new LengthStep(Length.ofInchFraction(1, 4));
    private static final LengthStep MILLIMETRES = new LengthStep(Length.ofMillimetres(5));

    public LengthStep {
        if (step.signum() <= 0) {
            throw new IllegalArgumentException("A step must be greater than zero, but is %s.".formatted(step));
        }
    }

    /**
     * @param unit that the project is shown in
     * @return 1/4 in or 5 mm
     */
    public static LengthStep of(DisplayUnit unit) {
        return unit == DisplayUnit.MILLIMETRE ? MILLIMETRES : INCHES;
    }

    /**
     * @param length any
     * @return the nearest multiple of the step; halfway, the greater one
     */
    public Length round(Length length) {
        return step.times(Math.floorDiv(length.units() + step.units() / 2, step.units()));
    }
}
