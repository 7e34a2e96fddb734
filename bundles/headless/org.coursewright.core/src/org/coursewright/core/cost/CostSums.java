package org.coursewright.core.cost;

import java.util.Objects;

import org.coursewright.measure.Money;
import org.coursewright.takeoff.cost.CostBreakdown;
import org.coursewright.takeoff.cost.CostKind;

/**
 * A cost by what it is for; exact, so that parts add up to the whole however they are grouped.
 *
 * @param material direct cost
 * @param labour direct cost
 * @param plant direct cost
 * @param haulage direct cost
 * @param tax on direct cost
 * @param overhead on both
 * @param contingency on all
 * @param total everything together
 */
public record CostSums(Money material, Money labour, Money plant, Money haulage, Money tax, Money overhead,
        Money contingency, Money total) {

    public CostSums {
        Objects.requireNonNull(total, "total");
    }

    static CostSums of(CostBreakdown cost) {
        return new CostSums(cost.direct(CostKind.MATERIAL), cost.direct(CostKind.LABOUR), cost.direct(CostKind.PLANT),
                cost.direct(CostKind.HAULAGE), cost.tax(), cost.overhead(), cost.contingency(), cost.total());
    }

    /** @return material, labour, plant and haulage */
    public Money direct() {
        return material.plus(labour).plus(plant).plus(haulage);
    }
}
