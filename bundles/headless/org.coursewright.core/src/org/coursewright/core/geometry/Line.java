package org.coursewright.core.geometry;

import java.math.BigInteger;

import org.coursewright.measure.Length;

/**
 * A centre line that can be a wall's, in whole units.
 *
 * @param order the wall's place among the walls given
 * @param mark the wall's mark
 * @param from where it starts
 * @param to where it ends, more than 1 mm from the start
 * @param thickness of the wall (1/320 mm), greater than zero
 */
record Line(int order, String mark, Point from, Point to, long thickness) {

    /** Ends closer than 0.1 mm coincide: coordinates of slanted walls are rounded. */
    static final long JOINED = Length.UNITS_PER_MILLIMETRE / 10;

    static Line of(int order, CentreLine wall) {
        return new Line(order, wall.mark(), new Point(wall.fromX().units(), wall.fromY().units()),
                new Point(wall.toX().units(), wall.toY().units()), wall.thickness().units());
    }

    Vector vector() {
        return from.to(to);
    }

    long length() {
        return vector().length();
    }

    Point end(Place place) {
        return place == Place.START ? from : to;
    }

    long west() {
        return Math.min(from.x(), to.x());
    }

    long east() {
        return Math.max(from.x(), to.x());
    }

    long south() {
        return Math.min(from.y(), to.y());
    }

    long north() {
        return Math.max(from.y(), to.y());
    }

    /** @return whether the upright boxes around two lines are at most {@code margin} apart in both directions */
    boolean boxIsWithin(long margin, Line other) {
        return other.west() <= east() + margin && west() <= other.east() + margin && other.south() <= north() + margin
                && south() <= other.north() + margin;
    }

    private boolean boxHolds(Point point, long margin) {
        return point.x() >= west() - margin && point.x() <= east() + margin && point.y() >= south() - margin
                && point.y() <= north() + margin;
    }

    /** @return whether the foot of a point lies between the ends, not at them */
    boolean isBeside(Point point) {
        BigInteger along = from.to(point).dot(vector());
        return along.signum() > 0 && along.compareTo(vector().lengthSquared()) < 0;
    }

    /** @return whether a point is at most {@code reach} from the infinite line, exactly */
    boolean isWithin(long reach, Point point) {
        BigInteger area = from.to(point).cross(vector());
        BigInteger limit = BigInteger.valueOf(reach).pow(2).multiply(vector().lengthSquared());
        return area.pow(2).compareTo(limit) <= 0;
    }

    /** @return whether a point is on the line between its ends, to 0.1 mm */
    boolean carries(Point point) {
        return boxHolds(point, JOINED) && isBeside(point) && isWithin(JOINED, point);
    }

    /** @return whether more than {@code length} of this line has the other beside it */
    boolean shares(long length, Line other) {
        BigInteger one = from.to(other.from()).dot(vector());
        BigInteger end = from.to(other.to()).dot(vector());
        BigInteger begins = one.min(end).max(BigInteger.ZERO);
        BigInteger ends = one.max(end).min(vector().lengthSquared());
        BigInteger common = ends.subtract(begins);
        BigInteger limit = BigInteger.valueOf(length).pow(2).multiply(vector().lengthSquared());
        return common.signum() > 0 && common.pow(2).compareTo(limit) > 0;
    }

    /** @return the nearest point of the infinite line, to the nearest unit */
    Point foot(Point point) {
        return from.towards(vector(), from.to(point).dot(vector()), vector().lengthSquared());
    }

    /** @return the place of a point beside the line, as a distance from the start */
    MeetingEnd along(Point point) {
        BigInteger along = from.to(point).dot(vector());
        BigInteger units = Nearest.root(along.pow(2), vector().lengthSquared());
        return new MeetingEnd(mark, Place.ALONG, Length.ofUnits(units.longValueExact()));
    }

    /** @return one of the two ends */
    MeetingEnd at(Place end) {
        return new MeetingEnd(mark, end, end == Place.START ? Length.ZERO : Length.ofUnits(length()));
    }
}
