package org.coursewright.core.geometry;

import java.math.BigInteger;

/** Rounding of exact results to whole units, a half away from zero. */
final class Nearest {

    private Nearest() {
    }

    /** @return the integer nearest to {@code dividend / divisor}; the divisor is greater than zero */
    static BigInteger quotient(BigInteger dividend, BigInteger divisor) {
        BigInteger magnitude = dividend.abs().shiftLeft(1).add(divisor).divide(divisor.shiftLeft(1));
        return dividend.signum() < 0 ? magnitude.negate() : magnitude;
    }

    /** @return the integer nearest to {@code value / 2} */
    static long half(long value) {
        return quotient(BigInteger.valueOf(value), BigInteger.TWO).longValueExact();
    }

    /** @return the integer nearest to the square root of {@code radicand / divisor}, neither of them negative */
    static BigInteger root(BigInteger radicand, BigInteger divisor) {
        return radicand.shiftLeft(2).divide(divisor).sqrt().add(BigInteger.ONE).shiftRight(1);
    }
}
