package org.coursewright.core.cost;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

import org.coursewright.measure.Money;

/**
 * How far the total may be off, by simulation.
 *
 * @param mean of all draws
 * @param deviation standard deviation of all draws
 * @param p10 total that a tenth of the draws does not exceed
 * @param p50 total that half of them do not exceed
 * @param p80 total that four fifths do not exceed
 * @param p90 total that nine tenths do not exceed
 * @param draws how many
 * @param seed that gives the same draws again
 * @param lines what each uncertain line does to the total, the widest swing first
 * @param sources what each source of uncertainty does to it, all its lines moving together, the widest swing first
 */
public record PriceRange(Money mean, Money deviation, Money p10, Money p50, Money p80, Money p90, int draws, long seed,
        List<Swing> lines, List<Swing> sources) {

    public PriceRange {
        Objects.requireNonNull(mean, "mean");
        lines = List.copyOf(lines);
        sources = List.copyOf(sources);
    }

    /**
     * A bar of the tornado.
     *
     * @param name of the line or source
     * @param low expected total if it is at its 10th percentile and all else at its mean
     * @param high expected total if it is at its 90th percentile and all else at its mean
     * @param contribution its share of the variance of the total
     */
    public record Swing(String name, Money low, Money high, BigDecimal contribution) {

        public Swing {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(low, "low");
            Objects.requireNonNull(high, "high");
            Objects.requireNonNull(contribution, "contribution");
        }
    }
}
