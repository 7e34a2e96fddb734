package org.coursewright.benchmarks.oracle;

import java.util.ArrayList;
import java.util.List;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;

/** The laps between joints of consecutive courses, each of which may be given up at the price of a violation. */
final class CpLaps {

    private final CpModel model;
    private final long lap;
    private final List<BoolVar> violations = new ArrayList<>();

    /** @param lap the least lap (grid) */
    CpLaps(CpModel model, long lap) {
        this.model = model;
        this.lap = lap;
    }

    List<BoolVar> violations() {
        return violations;
    }

    void keep(CpRun lower, CpRun upper) {
        for (CpFilling below : lower.fillings()) {
            for (CpFilling above : upper.fillings()) {
                below.joints().forEach(one -> above.joints().forEach(other -> keep(one, other)));
            }
        }
    }

    private void keep(CpJoint one, CpJoint other) {
        if (one.alwaysBefore(other, lap) || other.alwaysBefore(one, lap)) {
            return;
        }
        BoolVar violated = model.newBoolVar("violated");
        violations.add(violated);
        boolean before = one.canBeBefore(other, lap);
        boolean after = other.canBeBefore(one, lap);
        Literal first = before && after
                ? model.newBoolVar("first")
                : before
                        ? model.trueLiteral()
                        : model.falseLiteral();
        if (!before && !after) {
            model.addBoolOr(new Literal[]{violated, one.chosen().not(), other.chosen().not()});
            return;
        }
        if (before) {
            follow(one, other, new Literal[]{one.chosen(), other.chosen(), violated.not(), first});
        }
        if (after) {
            follow(other, one, new Literal[]{one.chosen(), other.chosen(), violated.not(), first.not()});
        }
    }

    /** {@code later} begins at least a lap after {@code earlier} ends, compared on the grid of both together. */
    private void follow(CpJoint earlier, CpJoint later, Literal[] when) {
        LinearArgument gap = LinearExpr.newBuilder().addTerm(later.start(), earlier.parts())
                .addTerm(earlier.start(), -later.parts()).addTerm(earlier.width(), -later.parts());
        model.addGreaterOrEqual(gap, lap * earlier.parts() * later.parts()).onlyEnforceIf(when);
    }
}
