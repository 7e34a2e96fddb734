package org.coursewright.takeoff.cost;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Money;

/**
 * What one unit of a resource costs. Anything can be entered; a rate that cannot be used is reported on the lines that need
 * it.
 *
 * @param resource what it is the rate of
 * @param kind what is paid for
 * @param price of one unit
 * @param unitCode of the unit, UN/ECE Recommendation 20, such as {@code MTQ}
 * @param asOf day on which the price was good, if known
 * @param source where it is from, such as an offer or a price list
 */
public record Rate(String resource, CostKind kind, Money price, String unitCode, Optional<LocalDate> asOf,
        String source) {

    public Rate {
        Objects.requireNonNull(resource, "resource");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(price, "price");
        Objects.requireNonNull(unitCode, "unitCode");
        Objects.requireNonNull(asOf, "asOf");
        Objects.requireNonNull(source, "source");
    }
}
