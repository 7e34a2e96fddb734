package org.coursewright.core.cost;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.takeoff.cost.Rate;

/**
 * What a resource costs, copied out of the project.
 *
 * @param rate for the engine
 * @param trade it is charged to, if it says so
 * @param element it is charged to, if it says so
 * @param range how far the price may be off
 */
record RateBrief(Rate rate, Optional<String> trade, Optional<String> element, RangeBrief range) {

    RateBrief {
        Objects.requireNonNull(rate, "rate");
        Objects.requireNonNull(trade, "trade");
        Objects.requireNonNull(element, "element");
        Objects.requireNonNull(range, "range");
    }
}
