package org.coursewright.layout.ui.plan.dimension;

import java.util.Optional;

import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;

/**
 * Finds out on which side of a wall one looks into the open.
 *
 * @param storey with all walls
 */
record OpenSide(StoreyShape storey) {

    /** Looks from so many places along the wall. */
    private static final int LOOKS = 5;

    /** @return whether the open side is on the left; empty if other walls are all along on both sides */
    Optional<Boolean> of(WallShape wall) {
        int left = open(wall, wall.heading().left());
        int right = open(wall, wall.heading().left().reversed());
        return left == 0 && right == 0 ? Optional.empty() : Optional.of(left > right);
    }

    private int open(WallShape wall, Heading away) {
        int open = 0;
        for (int i = 0; i < LOOKS; i++) {
            Length along = Length.ofUnits(wall.from().distance(wall.to()).units() * (2 * i + 1) / (2 * LOOKS));
            PlanPoint eye = wall.from().plus(wall.heading().ahead(along));
            open += storey.walls().values().stream().noneMatch(other -> other != wall && isHit(eye, away, other))
                    ? 1
                    : 0;
        }
        return open;
    }

    private static boolean isHit(PlanPoint eye, Heading away, WallShape other) {
        Length one = away.across(eye.to(other.from()));
        Length next = away.across(eye.to(other.to()));
        if (Long.signum(one.units()) * Long.signum(next.units()) > 0 || one.equals(next)) {
            return false;
        }
        double share = (double) one.units() / (one.units() - next.units());
        PlanPoint hit = other.from().plus(other.heading().ahead(
                Length.ofUnits(Math.round(share * other.from().distance(other.to()).units()))));
        return away.along(eye.to(hit)).signum() > 0;
    }
}
