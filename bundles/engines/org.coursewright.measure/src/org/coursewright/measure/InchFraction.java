package org.coursewright.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * A typed fraction such as 3/8.
 *
 * @param numerator at least 0
 * @param denominator at least 0
 */
record InchFraction(BigInteger numerator, BigInteger denominator) {

    private static final int FINEST = 64;

    /** @param text two whole numbers with a slash */
    static InchFraction of(String text) {
        String[] parts = text.replace(" ", "").split("/");
        return new InchFraction(new BigInteger(parts[0]), new BigInteger(parts[1]));
    }

    /** @return whether the denominator is one that a folding rule has: 2, 4, 8, 16, 32 or 64 */
    boolean isOnRule() {
        return denominator.bitCount() == 1 && denominator.bitLength() > 1
                && denominator.compareTo(BigInteger.valueOf(FINEST)) <= 0;
    }

    /** @return the exact value of a fraction that is on the rule, which has six decimals at most */
    BigDecimal value() {
        return new BigDecimal(numerator).divide(new BigDecimal(denominator));
    }

    /** @return what is wrong with a fraction that is not on the rule, and the nearest that is */
    String complaint() {
        String rule = "a fraction has a denominator of 2, 4, 8, 16, 32 or 64, not %s".formatted(denominator);
        return denominator.signum() == 0 ? rule : rule + "; the nearest is " + nearest();
    }

    private String nearest() {
        BigInteger parts = new BigDecimal(numerator.multiply(BigInteger.valueOf(FINEST)))
                .divide(new BigDecimal(denominator), 0, RoundingMode.HALF_UP).toBigInteger();
        BigInteger[] wholeAndRest = parts.divideAndRemainder(BigInteger.valueOf(FINEST));
        int rest = wholeAndRest[1].intValue();
        if (rest == 0) {
            return wholeAndRest[0].toString();
        }
        int common = Integer.lowestOneBit(rest);
        String fraction = rest / common + "/" + FINEST / common;
        return wholeAndRest[0].signum() == 0 ? fraction : wholeAndRest[0] + " " + fraction;
    }
}
