package org.coursewright.core.geometry;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * A free end that was probably meant to meet another wall.
 *
 * @param end the end that meets nothing
 * @param other what it nearly meets
 * @param distance from the end to there, to the nearest 1/320 mm
 * @param joinX easting that the end would need to meet it
 * @param joinY northing that the end would need to meet it
 */
public record NearMiss(MeetingEnd end, MeetingEnd other, Length distance, Length joinX, Length joinY) {

    public NearMiss {
        Objects.requireNonNull(end, "end");
        Objects.requireNonNull(other, "other");
        Objects.requireNonNull(distance, "distance");
        Objects.requireNonNull(joinX, "joinX");
        Objects.requireNonNull(joinY, "joinY");
    }

    /** @return whether it is about these two walls, in any order */
    boolean isBetween(String mark, String otherMark) {
        return end.mark().equals(mark) && other.mark().equals(otherMark)
                || end.mark().equals(otherMark) && other.mark().equals(mark);
    }
}
