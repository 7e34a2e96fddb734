package org.coursewright.core.geometry;

import java.math.BigInteger;

/**
 * A point in plan.
 *
 * @param x easting (1/320 mm), at most 10 km either way
 * @param y northing (1/320 mm), at most 10 km either way
 */
record Point(long x, long y) {

    Vector to(Point other) {
        return new Vector(other.x - x, other.y - y);
    }

    /** @return the point {@code numerator / denominator} of a vector away, each coordinate to the nearest unit */
    Point towards(Vector vector, BigInteger numerator, BigInteger denominator) {
        return new Point(x + share(vector.dx(), numerator, denominator),
                y + share(vector.dy(), numerator, denominator));
    }

    /** @return whether the distance to {@code other} is at most {@code reach}, exactly */
    boolean isWithin(long reach, Point other) {
        Vector between = to(other);
        return Math.abs(between.dx()) <= reach && Math.abs(between.dy()) <= reach
                && between.lengthSquared().compareTo(BigInteger.valueOf(reach).pow(2)) <= 0;
    }

    private static long share(long whole, BigInteger numerator, BigInteger denominator) {
        return Nearest.quotient(BigInteger.valueOf(whole).multiply(numerator), denominator).longValueExact();
    }
}
