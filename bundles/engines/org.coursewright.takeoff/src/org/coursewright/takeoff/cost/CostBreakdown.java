package org.coursewright.takeoff.cost;

import java.util.Collections;
import java.util.Currency;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

import org.coursewright.measure.Money;

/**
 * An amount of money by what it is for; exact, in one currency.
 *
 * @param byKind direct cost by kind; kinds without cost may be missing
 * @param tax on direct cost
 * @param overhead on both
 * @param contingency on all
 */
public record CostBreakdown(Map<CostKind, Money> byKind, Money tax, Money overhead, Money contingency) {

    public CostBreakdown {
        byKind = Collections.unmodifiableMap(byKind.isEmpty() ? new EnumMap<>(CostKind.class) : new EnumMap<>(byKind));
        Objects.requireNonNull(tax, "tax");
        Objects.requireNonNull(overhead, "overhead");
        Objects.requireNonNull(contingency, "contingency");
    }

    /** @return nothing, to start a sum with */
    public static CostBreakdown zero(Currency currency) {
        Money zero = Money.zero(currency);
        return new CostBreakdown(Map.of(), zero, zero, zero);
    }

    /** @return both together */
    public CostBreakdown plus(CostBreakdown other) {
        Map<CostKind, Money> sum = new EnumMap<>(CostKind.class);
        Stream.of(byKind, other.byKind).forEach(part -> part.forEach((kind, money) -> sum.merge(kind, money,
                Money::plus)));
        return new CostBreakdown(sum, tax.plus(other.tax), overhead.plus(other.overhead), contingency.plus(
                other.contingency));
    }

    /** @return direct cost of a kind, zero if there is none */
    public Money direct(CostKind kind) {
        return byKind.getOrDefault(kind, Money.zero(tax.currency()));
    }

    /** @return direct cost of all kinds */
    public Money direct() {
        return byKind.values().stream().reduce(Money.zero(tax.currency()), Money::plus);
    }

    /** @return everything together */
    public Money total() {
        return direct().plus(tax).plus(overhead).plus(contingency);
    }
}
