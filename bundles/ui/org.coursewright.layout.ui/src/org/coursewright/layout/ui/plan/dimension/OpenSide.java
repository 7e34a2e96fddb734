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

    /** Whether the ray from the eye meets the other centre line; in floating point, for nothing is measured here. */
    private static boolean isHit(PlanPoint eye, Heading away, WallShape other) {
        double fromX = other.from().x().units() - eye.x().units();
        double fromY = other.from().y().units() - eye.y().units();
        double toX = other.to().x().units() - eye.x().units();
        double toY = other.to().y().units() - eye.y().units();
        double one = away.east() * fromY - away.north() * fromX;
        double next = away.east() * toY - away.north() * toX;
        if (one * next > 0 || one == next) {
            return false;
        }
        double share = one / (one - next);
        return away.east() * (fromX + share * (toX - fromX)) + away.north() * (fromY + share * (toY - fromY)) > 1;
    }
}
