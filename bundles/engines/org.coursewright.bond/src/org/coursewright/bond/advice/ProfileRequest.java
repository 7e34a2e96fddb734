package org.coursewright.bond.advice;

import java.util.List;
import java.util.Objects;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.measure.Length;

/**
 * A dimension to be looked at in a hurry, in a building that has been laid.
 *
 * @param building as it is planned; of the wall whose dimension it is all courses, of others it is enough that they are there
 * @param laid how it is laid, or was laid before the last edits
 * @param adjustable the dimension, and how far to look
 * @param keepClear where no opening may come that is not there now
 * @param step changes are whole multiples of this, greater than zero
 */
public record ProfileRequest(BondRequest building, BondResult laid, Adjustable adjustable, List<KeepClear> keepClear,
        Length step) {

    public ProfileRequest {
        Objects.requireNonNull(building, "building");
        Objects.requireNonNull(laid, "laid");
        Objects.requireNonNull(adjustable, "adjustable");
        keepClear = List.copyOf(keepClear);
        Objects.requireNonNull(step, "step");
        if (step.signum() <= 0) {
            throw new IllegalArgumentException("The step is %s: it must be greater than zero.".formatted(step));
        }
    }
}
