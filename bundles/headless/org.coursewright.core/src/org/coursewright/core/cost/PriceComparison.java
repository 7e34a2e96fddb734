package org.coursewright.core.cost;

import java.util.List;
import java.util.stream.Stream;

import org.coursewright.measure.Money;

/**
 * Scenarios side by side.
 *
 * @param prices the building as planned first, then the scenarios in the order of the project
 */
public record PriceComparison(List<PriceOutcome> prices) {

    public PriceComparison {
        prices = List.copyOf(prices);
    }

    /**
     * @param planned the building as planned
     * @param scenarios beside it, perhaps none
     * @return all of them
     */
    public static PriceComparison of(PriceOutcome planned, List<PriceOutcome> scenarios) {
        return new PriceComparison(Stream.concat(Stream.of(planned), scenarios.stream()).toList());
    }

    /** @return by how much each total is above that of the first; the first is zero */
    public List<Money> differences() {
        return prices.stream().map(price -> price.total().total().minus(prices.get(0).total().total())).toList();
    }
}
