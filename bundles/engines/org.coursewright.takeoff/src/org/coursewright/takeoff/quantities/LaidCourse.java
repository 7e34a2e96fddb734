package org.coursewright.takeoff.quantities;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.List;

import org.coursewright.measure.Length;

/**
 * One course with the bed joint under it.
 *
 * @param number from 1 at the bottom of the wall
 * @param height of its pieces, greater than zero
 * @param bedJoint the bed joint under it, zero or more
 * @param runs from start to end
 */
public record LaidCourse(int number, Length height, Length bedJoint, List<LaidRun> runs) {

    public LaidCourse {
        runs = List.copyOf(runs);
        require(number >= 1, "Course %d: courses are numbered from 1.", number);
        require(height.signum() > 0, "Course %d is %s high: it must be above zero.", number, height);
        require(bedJoint.signum() >= 0, "The bed joint of course %d is %s: it must not be negative.", number,
                bedJoint);
    }
}
