package org.coursewright.core.geometry;

/**
 * A wall as it is seen from a point that it touches.
 *
 * @param line its centre line
 * @param place where on it the point is
 * @param out the way it goes from there; for a wall that passes, the way to its end
 */
record Arm(Line line, Place place, Vector out) {

    static Arm of(Line line, Place place) {
        return new Arm(line, place, place == Place.END ? line.vector().reversed() : line.vector());
    }

    /** @return a passing wall's other way */
    Arm reversed() {
        return new Arm(line, place, out.reversed());
    }

    /** @return the end of the wall */
    Point at() {
        return line.end(place);
    }

    /** @return the same for others to read */
    MeetingEnd meetingEnd(Point point) {
        return place == Place.ALONG ? line.along(point) : line.at(place);
    }
}
