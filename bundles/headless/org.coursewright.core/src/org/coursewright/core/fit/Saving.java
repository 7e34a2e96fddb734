package org.coursewright.core.fit;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Money;

/**
 * What a change spares; negative where it takes more.
 *
 * @param laps short laps
 * @param cuts cut pieces
 * @param blocks whole units that are laid or cut up
 * @param minutes of cutting, if somebody said what a cut takes
 * @param cost of cutting, blocks not counted, if somebody said what a cut costs
 */
public record Saving(int laps, int cuts, long blocks, Optional<BigDecimal> minutes, Optional<Money> cost) {

    public Saving {
        Objects.requireNonNull(minutes, "minutes");
        Objects.requireNonNull(cost, "cost");
    }

    static Saving of(int laps, int cuts, long blocks, Optional<CutRate> rate) {
        BigDecimal count = BigDecimal.valueOf(cuts);
        return new Saving(laps, cuts, blocks, rate.map(each -> each.minutes().multiply(count)),
                rate.flatMap(CutRate::cost).map(cost -> cost.times(count)));
    }
}
