package org.coursewright.core.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.measure.Length;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.MoveWallsCommand;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.edit.command.WallPosition;

/**
 * A wall moved sideways. Walls that end on its line stay with it: they become longer or shorter, and their openings keep
 * their places on the ground.
 */
public final class SidewaysMove {

    private final Wall wall;
    private final boolean alongX;
    private final List<Wall> followers = new ArrayList<>();

    private SidewaysMove(Wall wall) {
        this.wall = wall;
        alongX = wall.getFromY().equals(wall.getToY());
    }

    /**
     * How a wall may move.
     *
     * @param wall of a storey
     * @return how, empty if it does not lie along an axis of the plan, or a wall that would have to go along does not stand
     *         square to it
     */
    public static Optional<SidewaysMove> of(Wall wall) {
        boolean straight = wall.getFromX().equals(wall.getToX()) != wall.getFromY().equals(wall.getToY());
        if (!straight || !(wall.eContainer() instanceof Storey storey)) {
            return Optional.empty();
        }
        SidewaysMove move = new SidewaysMove(wall);
        for (Wall other : storey.getWalls()) {
            if (other != wall && (move.carriesStart(other) || move.carriesEnd(other))) {
                move.followers.add(other);
            }
        }
        return move.followers.stream().allMatch(move::isSquare) ? Optional.of(move) : Optional.empty();
    }

    /** @return where the wall stands: how far north of the origin if it runs east or west, else how far east */
    public Length offset() {
        return alongX ? wall.getFromY() : wall.getFromX();
    }

    /**
     * Moves the wall.
     *
     * @param change of its offset
     * @return an undoable command
     */
    public ProjectCommand command(Length change) {
        List<WallPosition> positions = new ArrayList<>();
        positions.add(position(wall, change, change, Length.ZERO));
        for (Wall follower : followers) {
            Length start = carriesStart(follower) ? change : Length.ZERO;
            Length end = carriesEnd(follower) ? change : Length.ZERO;
            positions.add(position(follower, start, end, ahead(follower, start).negated()));
        }
        return new MoveWallsCommand(positions, 1);
    }

    private WallPosition position(Wall moved, Length start, Length end, Length openingsBy) {
        return alongX
                ? new WallPosition(moved, moved.getFromX(), moved.getFromY().plus(start), moved.getToX(),
                        moved.getToY().plus(end), openingsBy)
                : new WallPosition(moved, moved.getFromX().plus(start), moved.getFromY(),
                        moved.getToX().plus(end), moved.getToY(), openingsBy);
    }

    /** How far along a follower its start goes. */
    private Length ahead(Wall follower, Length start) {
        Length run = alongX
                ? follower.getToY().minus(follower.getFromY())
                : follower.getToX().minus(follower.getFromX());
        return start.times(run.signum());
    }

    private boolean carriesStart(Wall other) {
        return isOnLine(other.getFromX(), other.getFromY());
    }

    private boolean carriesEnd(Wall other) {
        return isOnLine(other.getToX(), other.getToY());
    }

    private boolean isOnLine(Length x, Length y) {
        return alongX
                ? y.equals(wall.getFromY()) && isBetween(x, wall.getFromX(), wall.getToX())
                : x.equals(wall.getFromX()) && isBetween(y, wall.getFromY(), wall.getToY());
    }

    private static boolean isBetween(Length at, Length one, Length other) {
        boolean forward = one.isLessThan(other);
        return !at.isLessThan(forward ? one : other) && !at.isGreaterThan(forward ? other : one);
    }

    private boolean isSquare(Wall other) {
        return alongX
                ? other.getFromX().equals(other.getToX()) && !other.getFromY().equals(other.getToY())
                : other.getFromY().equals(other.getToY()) && !other.getFromX().equals(other.getToX());
    }
}
