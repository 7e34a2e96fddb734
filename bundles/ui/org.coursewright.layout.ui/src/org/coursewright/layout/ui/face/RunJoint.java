package org.coursewright.layout.ui.face;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

import org.coursewright.bond.Run;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;

/** The joint gauge of a run. */
public final class RunJoint {

    private RunJoint() {
    }

    /**
     * @param run of a course
     * @return how wide each of its joints is, to the nearest 1/320 mm, which is finer than any can be laid; empty without
     *         joints
     */
    public static Optional<Length> of(Run run) {
        return run.joint().map(RunJoint::rounded);
    }

    private static Length rounded(LengthRatio joint) {
        return Length.ofUnits(joint.toMillimetres().multiply(BigDecimal.valueOf(
                Length.UNITS_PER_MILLIMETRE)).setScale(0, RoundingMode.HALF_UP).longValueExact());
    }
}
