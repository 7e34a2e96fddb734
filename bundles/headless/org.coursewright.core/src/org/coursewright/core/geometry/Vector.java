package org.coursewright.core.geometry;

import java.math.BigInteger;

/**
 * A direction and distance in plan.
 *
 * @param dx eastward (1/320 mm), at most 20 km either way
 * @param dy northward (1/320 mm), at most 20 km either way
 */
record Vector(long dx, long dy) {

    /** Walls count as in line or square when they are so to 5 mm in a metre, 0.29 degrees (common practice, no source). */
    private static final BigInteger STRAIGHTNESS = BigInteger.valueOf(200);

    Vector reversed() {
        return new Vector(-dx, -dy);
    }

    /** @return the scalar product, which needs up to 68 bits */
    BigInteger dot(Vector other) {
        return product(dx, other.dx).add(product(dy, other.dy));
    }

    /** @return the cross product, positive if {@code other} points to the left of this */
    BigInteger cross(Vector other) {
        return product(dx, other.dy).subtract(product(dy, other.dx));
    }

    BigInteger lengthSquared() {
        return dot(this);
    }

    /** @return the length to the nearest 1/320 mm */
    long length() {
        return Nearest.root(lengthSquared(), BigInteger.ONE).longValueExact();
    }

    boolean isOpposite(Vector other) {
        return dot(other).signum() < 0 && isParallel(other);
    }

    boolean isParallel(Vector other) {
        return cross(other).abs().multiply(STRAIGHTNESS).compareTo(dot(other).abs()) <= 0;
    }

    boolean isSquareTo(Vector other) {
        return dot(other).abs().multiply(STRAIGHTNESS).compareTo(cross(other).abs()) <= 0;
    }

    /** @return the angle to {@code other}, 0 to 180 degrees; for messages only, since it is not exact */
    double degreesTo(Vector other) {
        return Math.toDegrees(Math.atan2(cross(other).abs().doubleValue(), dot(other).doubleValue()));
    }

    private static BigInteger product(long a, long b) {
        return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
    }
}
