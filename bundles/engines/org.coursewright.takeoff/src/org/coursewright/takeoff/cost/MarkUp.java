package org.coursewright.takeoff.cost;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.math.BigDecimal;
import java.util.Map;

import org.coursewright.measure.Money;

/**
 * What comes on top of direct cost, in this order, each on the sum of what stands before it:
 * <ol>
 * <li>direct cost: quantity × price, haulage being a kind of its own,</li>
 * <li>tax: a share of direct cost by its kind, such as sales tax on material,</li>
 * <li>overhead: a share of direct cost and tax,</li>
 * <li>contingency: a share of direct cost, tax and overhead.</li>
 * </ol>
 *
 * @param tax share by kind, such as 0.06 for 6 %; kinds that are not named are not taxed
 * @param overhead share
 * @param contingency share
 */
public record MarkUp(Map<CostKind, BigDecimal> tax, BigDecimal overhead, BigDecimal contingency) {

    /** Direct cost only. */
    public static final MarkUp NONE = new MarkUp(Map.of(), BigDecimal.ZERO, BigDecimal.ZERO);

    public MarkUp {
        tax = Map.copyOf(tax);
        tax.forEach((kind, share) -> requireShare("tax on " + kind, share));
        requireShare("overhead", overhead);
        requireShare("contingency", contingency);
    }

    private static void requireShare(String name, BigDecimal share) {
        require(share.signum() >= 0, "The share of %s is %s: it must not be negative.", name, share);
    }

    /** @return the build-up on a direct cost */
    CostBreakdown on(CostKind kind, Money direct) {
        Money taxed = direct.times(tax.getOrDefault(kind, BigDecimal.ZERO));
        Money over = direct.plus(taxed).times(overhead);
        Money reserve = direct.plus(taxed).plus(over).times(contingency);
        return new CostBreakdown(Map.of(kind, direct), taxed, over, reserve);
    }
}
