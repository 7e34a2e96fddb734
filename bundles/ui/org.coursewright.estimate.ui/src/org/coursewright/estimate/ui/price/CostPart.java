package org.coursewright.estimate.ui.price;

import java.util.List;
import java.util.function.Function;

import org.coursewright.core.cost.CostSums;
import org.coursewright.measure.Money;

/**
 * Something that a cost is made of.
 *
 * @param label its name for people
 * @param amount how much of a cost it is
 */
public record CostPart(String label, Function<CostSums, Money> amount) {

    /** All of them, in the order in which a cost is built up; together they are the total. */
    public static final List<CostPart> ALL = List.of(new CostPart(PriceText.material, CostSums::material),
            new CostPart(PriceText.labour, CostSums::labour), new CostPart(PriceText.plant, CostSums::plant),
            new CostPart(PriceText.haulage, CostSums::haulage), new CostPart(PriceText.tax, CostSums::tax),
            new CostPart(PriceText.overhead, CostSums::overhead), new CostPart(PriceText.contingency,
                    CostSums::contingency));

    /** @return how much of a cost it is */
    public Money of(CostSums cost) {
        return amount.apply(cost);
    }
}
