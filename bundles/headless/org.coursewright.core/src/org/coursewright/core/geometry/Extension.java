package org.coursewright.core.geometry;

import java.math.BigInteger;

/**
 * How far a wall goes beyond the end of its centre line (1/320 mm), negative if it stops short of it. Left and right are
 * seen from the end along the wall.
 *
 * <p>With the angle a between the ways that two walls go from the point, the own thickness t and the thickness m of the
 * wall met, plane trigonometry gives
 * <ul>
 * <li>at a corner, to the point where the outer faces meet: (m + t cos a) / (2 sin a), and as much less on the inner
 * side;
 * <li>at a stem, to the near face of the bar: minus m / (2 sin a) on the centre line, minus (m + t cos a) / (2 sin a) on
 * the side to which the bar goes at the angle a, minus (m - t cos a) / (2 sin a) on the other.
 * </ul>
 * At a square meeting these are m/2 and minus m/2. In sharper corners the outer faces meet far out; a mason cuts such a
 * point off, so that no extension is longer than both thicknesses together (common practice, no source). Each is rounded
 * to the nearest unit.
 *
 * @param centre to the outer end face
 * @param left on the left face
 * @param right on the right face
 */
record Extension(long centre, long left, long right) {

    static final Extension NONE = new Extension(0, 0, 0);

    /** @return what a wall needs to end in a corner with another */
    static Extension corner(Arm own, Arm met, boolean square) {
        int side = own.out().cross(met.out()).signum();
        if (side == 0) {
            return NONE;
        }
        long outer = square ? Nearest.half(met.line().thickness()) : skew(own, met.out(), met.line().thickness(), 1);
        return new Extension(outer, -side * outer, side * outer);
    }

    /** @return what a wall needs to end against the near face of a bar */
    static Extension stem(Arm own, Vector bar, long barThickness, boolean square) {
        int side = own.out().cross(bar).signum();
        if (side == 0) {
            return NONE;
        }
        if (square) {
            long half = -Nearest.half(barThickness);
            return new Extension(half, half, half);
        }
        Vector toLeft = side > 0 ? bar : bar.reversed();
        return new Extension(-skew(own, toLeft, barThickness, 0), -skew(own, toLeft, barThickness, 1),
                -skew(own, toLeft, barThickness, -1));
    }

    /** (m + f t cos a) / (2 sin a), where cos a = dot / (|u| |v|) and sin a = |cross| / (|u| |v|). */
    private static long skew(Arm own, Vector met, long metThickness, int ownShare) {
        BigInteger lengths = own.out().lengthSquared().multiply(met.lengthSquared());
        BigInteger metTerm = Nearest.root(BigInteger.valueOf(metThickness).pow(2).multiply(lengths), BigInteger.ONE);
        BigInteger ownTerm = own.out().dot(met).multiply(BigInteger.valueOf(ownShare * own.line().thickness()));
        BigInteger limit = BigInteger.valueOf(own.line().thickness() + metThickness);
        BigInteger exact = Nearest.quotient(metTerm.add(ownTerm), own.out().cross(met).abs().shiftLeft(1));
        return exact.min(limit).max(limit.negate()).longValueExact();
    }
}
