package org.coursewright.core.geometry;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * The middle of a straight wall in plan, from its start to its end. Any values are taken, since a schedule may hold
 * mistakes; {@link WallNetwork#leftOut()} tells of those that no wall can have.
 *
 * @param mark the wall's mark, not null
 * @param fromX easting of the start, not null
 * @param fromY northing of the start, not null
 * @param toX easting of the end, not null
 * @param toY northing of the end, not null
 * @param thickness of the wall across its centre line, not null
 */
public record CentreLine(String mark, Length fromX, Length fromY, Length toX, Length toY, Length thickness) {

    public CentreLine {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(fromX, "fromX");
        Objects.requireNonNull(fromY, "fromY");
        Objects.requireNonNull(toX, "toX");
        Objects.requireNonNull(toY, "toY");
        Objects.requireNonNull(thickness, "thickness");
    }
}
