package org.coursewright.takeoff.labour;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

import org.coursewright.takeoff.Fraction;

/**
 * How a crew gets faster by repetition: with every doubling, the time falls to {@code rate} of what it was
 * (T. P. Wright, "Factors affecting the cost of airplanes", Journal of the Aeronautical Sciences 3, 1936). Novices on earth
 * block learn at 0.80 to 0.90, masonry crews at 0.90 to 0.95 (common practice, no source).
 *
 * @param rate greater than 0, at most 1
 * @param theory what falls: the time of each repetition or the average of all
 * @param repetition quantity that makes one repetition, in the unit of the task; greater than zero
 * @param plateau repetitions after which the time of each stays, at least 1
 */
public record LearningCurve(Fraction rate, Theory theory, Fraction repetition, long plateau) {

    private static final int DECIMALS = 9;

    /** What falls with every doubling. */
    public enum Theory {
        /** The time of the single repetition (Crawford). */
        UNIT,
        /** The average time of all repetitions so far (Wright's original). */
        CUMULATIVE_AVERAGE
    }

    public LearningCurve {
        Objects.requireNonNull(theory, "theory");
        require(rate.signum() > 0 && rate.compareTo(Fraction.ONE) <= 0,
                "The learning rate is %s: give one greater than 0 and at most 1, such as 0.9.", rate.toDecimal());
        require(repetition.signum() > 0, "A repetition is %s: give more than zero.", repetition.toDecimal());
        require(plateau >= 1, "Learning ends after %d repetitions: give at least 1.", plateau);
    }

    /**
     * @param quantity of the task, zero or more
     * @return average hours by hours of the first repetition, 0 to 1, rounded half even to nine decimals; 1 for no quantity
     */
    public Fraction averageFactor(Fraction quantity) {
        double repetitions = quantity.dividedBy(repetition).toDecimal().doubleValue();
        double factor = repetitions <= 1 ? 1 : total(repetitions) / repetitions;
        return Fraction.of(BigDecimal.valueOf(factor).setScale(DECIMALS, RoundingMode.HALF_EVEN));
    }

    /**
     * @param number of the repetition, at least 1
     * @return its time by that of the first
     */
    public double single(long number) {
        long learned = Math.min(number, plateau);
        return theory == Theory.UNIT
                ? Math.pow(learned, exponent())
                : totalOfWhole(learned) - totalOfWhole(learned - 1);
    }

    /**
     * @param repetitions zero or more; the last may be begun only
     * @return the time of all by that of the first
     */
    public double total(double repetitions) {
        long whole = (long) repetitions;
        double begun = repetitions > whole ? (repetitions - whole) * single(whole + 1) : 0;
        return totalOfWhole(Math.min(whole, plateau)) + Math.max(0, whole - plateau) * single(plateau) + begun;
    }

    private double totalOfWhole(long count) {
        if (theory == Theory.CUMULATIVE_AVERAGE) {
            return count == 0 ? 0 : Math.pow(count, 1 + exponent());
        }
        double total = 0;
        for (long number = 1; number <= count; number++) {
            total += Math.pow(number, exponent());
        }
        return total;
    }

    private double exponent() {
        return Math.log(rate.toDecimal().doubleValue()) / Math.log(2);
    }
}
