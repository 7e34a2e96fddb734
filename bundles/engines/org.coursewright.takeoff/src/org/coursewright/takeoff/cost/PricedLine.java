package org.coursewright.takeoff.cost;

import java.util.Objects;

import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;

/**
 * A line with its price.
 *
 * @param line what is priced
 * @param rate with what
 * @param priced the line's quantity in the unit of the rate
 * @param cost the build-up
 */
public record PricedLine(CostLine line, Rate rate, Quantity priced, CostBreakdown cost) {

    private static final Formula COST = new Formula("cost.line", "quantity × price + tax + overhead + contingency",
            "order of build-up: common practice, no source");

    public PricedLine {
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(rate, "rate");
        Objects.requireNonNull(priced, "priced");
        Objects.requireNonNull(cost, "cost");
    }

    /** @return how the cost came about; money is in the currency of the scenario */
    public Trace trace() {
        return Trace.of(COST, new TraceInput("quantity", priced), amount("price", rate.price()), amount("tax", cost
                .tax()), amount("overhead", cost.overhead()), amount("contingency", cost.contingency())).from(line
                        .trace().elements());
    }

    private static TraceInput amount(String symbol, Money money) {
        return TraceInput.of(symbol, Fraction.of(money.amount()));
    }
}
