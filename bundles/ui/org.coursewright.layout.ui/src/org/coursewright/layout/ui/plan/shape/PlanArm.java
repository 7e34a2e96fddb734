package org.coursewright.layout.ui.plan.shape;

import java.util.Comparator;
import java.util.List;

import org.coursewright.measure.Length;

/**
 * A wall as it is seen from a point at which it meets others.
 *
 * @param at the point
 * @param out where the wall leads from there; for a wall that passes, to its end
 * @param thickness of the wall
 */
record PlanArm(PlanPoint at, Heading out, Length thickness) {

    private PlanLine face(int side) {
        return new PlanLine(at, out).shifted(Length.ofUnits(side * thickness.units() / 2));
    }

    /** Cut square at the point. */
    EndCut square(boolean open) {
        return new EndCut(face(1).through(), face(-1).through(), open);
    }

    /** Cut where the faces meet those of the other wall at a corner; the tip of a sharp corner is taken off. */
    EndCut corner(PlanArm other) {
        return new EndCut(corner(1, other), corner(-1, other), false);
    }

    private PlanPoint corner(int side, PlanArm other) {
        PlanLine own = face(side);
        Length reach = thickness.plus(other.thickness);
        PlanPoint found = own.crossing(other.face(-side)).orElse(own.through());
        Length along = out.along(at.to(found));
        if (along.abs().isGreaterThan(reach)) {
            return own.through().plus(out.ahead(along.signum() < 0 ? reach.negated() : reach));
        }
        return found;
    }

    /** Cut where the faces meet the near face of the thickest of what carries on. */
    EndCut against(List<PlanArm> bar) {
        PlanLine near = bar.stream().max(Comparator.comparing(PlanArm::thickness)).orElseThrow().faceTowards(out);
        return new EndCut(onto(near, 1), onto(near, -1), false);
    }

    private PlanPoint onto(PlanLine near, int side) {
        return face(side).crossing(near).orElse(face(side).through());
    }

    private PlanLine faceTowards(Heading stem) {
        return face(isOnLeft(stem) ? 1 : -1);
    }

    /** Whether a wall that leads away from the point leads to the left. */
    boolean isOnLeft(Heading stem) {
        return out.cross(stem) > 0;
    }
}
