package org.coursewright.takeoff;

import java.math.BigInteger;
import java.util.Map;
import java.util.Objects;

import org.coursewright.measure.Length;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;

/**
 * An exact volume, counted in cubes with edges of 1/320 mm as {@link Length} counts lengths. A fraction only where a
 * length is one: at the equal joints of a run, or at a joint that is filled in part.
 *
 * @param cubes the count of (1/320 mm)³, any sign
 */
public record Volume(Fraction cubes) implements Comparable<Volume> {

    /** No volume at all. */
    public static final Volume ZERO = new Volume(Fraction.ZERO);

    private static final Fraction CUBIC_METRE = cubed(1000 * Length.UNITS_PER_MILLIMETRE);
    private static final Fraction CUBIC_FOOT = cubed(12 * Length.UNITS_PER_INCH);
    private static final Map<UnitCode, Fraction> CUBES_PER_UNIT = Map.of(
            UnitCode.CUBIC_METRE, CUBIC_METRE,
            UnitCode.CUBIC_DECIMETRE, cubed(100 * Length.UNITS_PER_MILLIMETRE),
            UnitCode.LITRE, cubed(100 * Length.UNITS_PER_MILLIMETRE),
            UnitCode.CUBIC_FOOT, CUBIC_FOOT,
            UnitCode.CUBIC_YARD, CUBIC_FOOT.times(27),
            // 231 cubic inches, NIST Handbook 44, Appendix C
            UnitCode.US_GALLON, cubed(Length.UNITS_PER_INCH).times(231));

    public Volume {
        Objects.requireNonNull(cubes, "cubes");
    }

    /** @return the volume of a box with these edges */
    public static Volume of(Length first, Length second, Length third) {
        BigInteger product = BigInteger.valueOf(first.units()).multiply(BigInteger.valueOf(second.units())).multiply(
                BigInteger.valueOf(third.units()));
        return new Volume(new Fraction(product, BigInteger.ONE));
    }

    /**
     * @param amount how many, not null
     * @param unit a unit of volume
     * @return exactly that volume
     * @throws IllegalArgumentException if the unit is none of volume
     */
    public static Volume of(Fraction amount, UnitCode unit) {
        return new Volume(amount.times(cubesPer(unit)));
    }

    public Volume plus(Volume other) {
        return new Volume(cubes.plus(other.cubes));
    }

    public Volume minus(Volume other) {
        return new Volume(cubes.minus(other.cubes));
    }

    public Volume times(Fraction factor) {
        return new Volume(cubes.times(factor));
    }

    /**
     * @param unit cubic metre, decimetre, foot or yard, litre or US gallon
     * @return how many of that unit, exactly
     * @throws IllegalArgumentException if the unit is none of volume
     */
    public Fraction in(UnitCode unit) {
        return cubes.dividedBy(cubesPer(unit));
    }

    /**
     * @param unit as for {@link #in}
     * @return this volume in that unit, rounded as {@link Fraction#toDecimal()} does
     */
    public Quantity toQuantity(UnitCode unit) {
        return Quantity.of(in(unit).toDecimal(), unit);
    }

    @Override
    public int compareTo(Volume other) {
        return cubes.compareTo(other.cubes);
    }

    private static Fraction cubesPer(UnitCode unit) {
        Fraction cubes = CUBES_PER_UNIT.get(unit);
        if (cubes == null) {
            throw new IllegalArgumentException("%s (%s) is not a unit of volume; use such as %s.".formatted(
                    unit.title(), unit.code(), UnitCode.CUBIC_METRE.code()));
        }
        return cubes;
    }

    private static Fraction cubed(long edge) {
        return new Fraction(BigInteger.valueOf(edge).pow(3), BigInteger.ONE);
    }
}
