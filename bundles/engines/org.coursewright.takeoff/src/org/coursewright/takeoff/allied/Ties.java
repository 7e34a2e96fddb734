package org.coursewright.takeoff.allied;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Objects;

import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.TraceInput;

/**
 * Ties laid into bed joints, at a junction or along a wall.
 *
 * @param element junction or wall
 * @param courses that it has, zero or more
 * @param everyCourses one bed joint in so many has ties, at least 1
 * @param perJoint ties in such a bed joint, zero or more
 */
public record Ties(String element, int courses, int everyCourses, int perJoint) {

    private static final Formula COUNT = new Formula("ties.count", "⌊courses ÷ everyCourses⌋ × perJoint",
            AlliedFormulas.PRACTICE);

    public Ties {
        Objects.requireNonNull(element, "element");
        require(courses >= 0 && perJoint >= 0, "%s has %d courses and %d ties in a joint: neither may be negative.",
                element, courses, perJoint);
        require(everyCourses >= 1, "%s has ties every %d courses: give at least 1.", element, everyCourses);
    }

    /** @return how many */
    public Figure figure() {
        long count = (long) (courses / everyCourses) * perJoint;
        return AlliedFormulas.figure(element, COUNT, Fraction.of(count), UnitCode.PIECE, TraceInput.of("courses",
                courses), TraceInput.of("everyCourses", everyCourses), TraceInput.of("perJoint", perJoint));
    }
}
