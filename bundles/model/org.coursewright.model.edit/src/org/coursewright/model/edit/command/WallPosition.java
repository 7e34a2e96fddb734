package org.coursewright.model.edit.command;

import java.math.BigInteger;
import java.util.Objects;

import org.coursewright.measure.Length;
import org.coursewright.model.building.Wall;

/**
 * Where a wall is to lie.
 *
 * @param wall of a project
 * @param fromX start, east
 * @param fromY start, north
 * @param toX end, east
 * @param toY end, north
 * @param openingsBy what is added to the offsets of its openings, so that they stay where they are when the start moves
 */
public record WallPosition(Wall wall, Length fromX, Length fromY, Length toX, Length toY, Length openingsBy) {

    public WallPosition {
        Objects.requireNonNull(wall, "wall");
        Objects.requireNonNull(openingsBy, "openingsBy");
    }

    /** By how much the wall becomes longer, rounded down to 1/320 mm at either length. */
    Length longer() {
        return length(fromX, fromY, toX, toY)
                .minus(length(wall.getFromX(), wall.getFromY(), wall.getToX(), wall.getToY()));
    }

    private static Length length(Length fromX, Length fromY, Length toX, Length toY) {
        BigInteger east = BigInteger.valueOf(toX.minus(fromX).units());
        BigInteger north = BigInteger.valueOf(toY.minus(fromY).units());
        return Length.ofUnits(east.pow(2).add(north.pow(2)).sqrt().longValueExact());
    }
}
