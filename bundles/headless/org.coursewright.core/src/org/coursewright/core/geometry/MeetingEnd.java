package org.coursewright.core.geometry;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * A wall and where on it something is.
 *
 * @param mark the wall's mark
 * @param place which end, or between them
 * @param along how far from the start on the centre line, to the nearest 1/320 mm; zero at the start
 */
public record MeetingEnd(String mark, Place place, Length along) {

    public MeetingEnd {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(along, "along");
    }
}
