package org.coursewright.takeoff;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * An exact rational number in lowest terms. Fractions of equal value are equal.
 *
 * @param numerator any integer
 * @param denominator greater than zero, no common divisor with the numerator
 */
public record Fraction(BigInteger numerator, BigInteger denominator) implements Comparable<Fraction> {

    /** 0. */
    public static final Fraction ZERO = of(0);

    /** 1. */
    public static final Fraction ONE = of(1);

    /** Decimals of {@link #toDecimal()}. */
    public static final int DECIMALS = 12;

    public Fraction {
        Objects.requireNonNull(numerator, "numerator");
        if (denominator.signum() == 0) {
            throw new ArithmeticException("A fraction (%s/0) has a denominator other than zero.".formatted(numerator));
        }
        BigInteger common = denominator.equals(BigInteger.ONE) ? BigInteger.ONE : numerator.gcd(denominator);
        BigInteger divisor = denominator.signum() < 0 ? common.negate() : common;
        if (!divisor.equals(BigInteger.ONE)) {
            numerator = numerator.divide(divisor);
            denominator = denominator.divide(divisor);
        }
    }

    /**
     * @param whole any integer
     * @return that number
     */
    public static Fraction of(long whole) {
        return new Fraction(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    /**
     * @param numerator any integer
     * @param denominator any integer but zero
     * @return the quotient
     */
    public static Fraction of(long numerator, long denominator) {
        return new Fraction(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    /**
     * @param decimal not null
     * @return exactly that number
     */
    public static Fraction of(BigDecimal decimal) {
        BigInteger unscaled = decimal.unscaledValue();
        return decimal.scale() >= 0
                ? new Fraction(unscaled, BigInteger.TEN.pow(decimal.scale()))
                : new Fraction(unscaled.multiply(BigInteger.TEN.pow(-decimal.scale())), BigInteger.ONE);
    }

    /**
     * Reads a decimal number such as {@code 0.15}, for constants.
     *
     * @param decimal a number as {@link BigDecimal#BigDecimal(String)} reads it
     * @return exactly that number
     */
    public static Fraction of(String decimal) {
        return of(new BigDecimal(decimal));
    }

    public Fraction plus(Fraction other) {
        if (denominator.equals(other.denominator)) {
            return new Fraction(numerator.add(other.numerator), denominator);
        }
        return new Fraction(numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator));
    }

    public Fraction minus(Fraction other) {
        return plus(other.negated());
    }

    public Fraction times(Fraction other) {
        return new Fraction(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    public Fraction times(long factor) {
        return new Fraction(numerator.multiply(BigInteger.valueOf(factor)), denominator);
    }

    /**
     * @param other not zero
     * @return the quotient
     * @throws ArithmeticException if {@code other} is zero
     */
    public Fraction dividedBy(Fraction other) {
        return new Fraction(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
    }

    public Fraction negated() {
        return new Fraction(numerator.negate(), denominator);
    }

    /** @return -1, 0 or 1 as this is negative, zero or positive */
    public int signum() {
        return numerator.signum();
    }

    /**
     * @return the greatest integer not above this
     * @throws ArithmeticException if it does not fit
     */
    public long floor() {
        BigInteger[] parts = numerator.divideAndRemainder(denominator);
        return (parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0]).longValueExact();
    }

    /**
     * @return the least integer not below this
     * @throws ArithmeticException if it does not fit
     */
    public long ceiling() {
        return Math.negateExact(negated().floor());
    }

    /**
     * Leaves exact arithmetic, for showing and for money.
     *
     * @return this with {@value #DECIMALS} decimals, half even, without trailing zeros
     */
    public BigDecimal toDecimal() {
        BigDecimal rounded = new BigDecimal(numerator).divide(new BigDecimal(denominator), DECIMALS,
                RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    @Override
    public int compareTo(Fraction other) {
        return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
    }

    /** @return such as {@code 3/4}, or {@code 3} if it is whole */
    @Override
    public String toString() {
        return denominator.equals(BigInteger.ONE) ? numerator.toString() : numerator + "/" + denominator;
    }
}
