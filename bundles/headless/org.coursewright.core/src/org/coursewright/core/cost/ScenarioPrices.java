package org.coursewright.core.cost;

import java.util.List;

/**
 * What scenarios cost, without the building as planned.
 *
 * @param prices in the order of the project
 */
public record ScenarioPrices(List<PriceOutcome> prices) {

    public ScenarioPrices {
        prices = List.copyOf(prices);
    }
}
