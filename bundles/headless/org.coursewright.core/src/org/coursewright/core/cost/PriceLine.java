package org.coursewright.core.cost;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;

/**
 * A resource with its price, or with the reason why it has none.
 *
 * @param number of the line, from 1
 * @param resource how much of what, and how that came about
 * @param element ASTM E1557 code it is charged to
 * @param trade it is charged to
 * @param priced with what, if it could be priced
 * @param problem what to mend, if it could not
 */
public record PriceLine(int number, ResourceLine resource, String element, String trade, Optional<Priced> priced,
        Optional<String> problem) {

    public PriceLine {
        Objects.requireNonNull(resource, "resource");
        Objects.requireNonNull(element, "element");
        Objects.requireNonNull(trade, "trade");
        Objects.requireNonNull(priced, "priced");
        Objects.requireNonNull(problem, "problem");
    }

    /**
     * A price.
     *
     * @param kind {@code material}, {@code labour}, {@code plant} or {@code haulage}
     * @param quantity in the unit of the rate
     * @param rate for one of that unit
     * @param asOf when the rate was good, if known
     * @param source of the rate, may be empty
     * @param cost the build-up
     */
    public record Priced(String kind, Quantity quantity, Money rate, Optional<LocalDate> asOf, String source,
            CostSums cost) {

        public Priced {
            Objects.requireNonNull(kind, "kind");
            Objects.requireNonNull(quantity, "quantity");
            Objects.requireNonNull(rate, "rate");
            Objects.requireNonNull(asOf, "asOf");
            Objects.requireNonNull(source, "source");
            Objects.requireNonNull(cost, "cost");
        }

        /** @return whether it is for hours of people or machines, which may come out otherwise than reckoned */
        public boolean isForHours() {
            return kind.equals("labour") || kind.equals("plant");
        }
    }
}
