package org.coursewright.core.cost;

import java.util.Objects;

/**
 * The cost of an element or a trade.
 *
 * @param code of the element, or name of the trade
 * @param title of the element, or again the trade
 * @param cost of all its lines
 */
public record GroupSum(String code, String title, CostSums cost) {

    public GroupSum {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(cost, "cost");
    }
}
