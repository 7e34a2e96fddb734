package org.coursewright.core.geometry;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * A point where at least one wall ends, and what else is there.
 *
 * @param kind how the walls meet
 * @param ends what meets; for a tee and a cross first the walls that end against others, then those they end against; at
 *        a corner of three the first two make it and the third ends against the first
 * @param x easting of the point
 * @param y northing of the point
 * @param square whether all walls here are in line with or square to each other, to 5 mm in a metre
 * @param degrees the sharpest angle between walls here in degrees with one decimal: 90.0 at a square corner, 180.0 where
 *        walls are in line and at a free end
 */
public record WallMeeting(Kind kind, List<MeetingEnd> ends, Length x, Length y, boolean square, BigDecimal degrees) {

    /** How walls meet. */
    public enum Kind {
        /** One wall ends in the open. */
        FREE,
        /** Two walls, or three of which no two are in line, end at a point. */
        CORNER,
        /** A wall carries on where another in line with it ends. */
        INLINE,
        /** A wall ends against another, or against two in line. */
        TEE,
        /** Walls end against another from both sides, or four or more ends meet. */
        CROSS
    }

    public WallMeeting {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(x, "x");
        Objects.requireNonNull(y, "y");
        Objects.requireNonNull(degrees, "degrees");
        ends = List.copyOf(ends);
    }

    /** @return whether that end of that wall, or a place between its ends, is here */
    public boolean involves(String mark, Place place) {
        return ends.stream().anyMatch(end -> end.mark().equals(mark) && end.place() == place);
    }

    /** @return where on a wall that passes the meeting is, or zero if that wall does not */
    Length along(String mark) {
        return ends.stream().filter(end -> end.mark().equals(mark) && end.place() == Place.ALONG)
                .map(MeetingEnd::along).findFirst().orElse(Length.ZERO);
    }
}
