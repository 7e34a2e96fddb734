package org.coursewright.core.fit;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Money;

/**
 * What a change spares; negative where it takes more.
 *
 * @param laps short laps
 * @param units cuts, and the units and pieces that are laid or cut up
 * @param minutes of people, cutting and laying; of cutting alone if somebody said what a cut takes; empty if neither that
 *        nor the rates of the project are known
 * @param cost direct cost of units, laying and cutting; of cutting alone if somebody said what a cut takes; empty if
 *        neither that nor the rates of the project are known
 */
public record Saving(int laps, UnitsTaken units, Optional<BigDecimal> minutes, Optional<Money> cost) {

    public Saving {
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(minutes, "minutes");
        Objects.requireNonNull(cost, "cost");
    }

    /** @return cut pieces */
    public long cuts() {
        return units.cuts();
    }

    /** @return whole units, laid or cut up */
    public long blocks() {
        return units.blocks();
    }
}
