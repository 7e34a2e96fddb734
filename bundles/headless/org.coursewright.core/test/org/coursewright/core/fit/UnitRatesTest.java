package org.coursewright.core.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.PlanBuilder;
import org.coursewright.core.cost.PieceCostBook;
import org.coursewright.core.cost.PieceCosts;
import org.coursewright.measure.Money;
import org.coursewright.model.building.Bond;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Minutes and money of what a wall takes, worked by hand. */
class UnitRatesTest {

    /** Of the five pieces two are whole, one is a special, and two are cut from one unit. */
    private static final UnitsTaken TAKEN = new UnitsTaken(5, 2, 1, 1, 2);

    private final PlanBuilder plan = new PlanBuilder();

    @BeforeEach
    void wall() {
        plan.wall("W1", "0", "0", "100", "0", Bond.STRETCHER, "18");
        plan.unit().setMark("B14");
    }

    private static Money dollars(String amount) {
        return new Money(new BigDecimal(amount), Currency.getInstance("USD"));
    }

    private UnitRates rates(Optional<CutRate> rate, Map<String, PieceCosts> costs) {
        return new UnitRates(rate, new PieceCostBook(costs), new ProjectWalls(plan.project()));
    }

    private static Map<String, PieceCosts> costs(String type) {
        return Map.of(type, new PieceCosts(dollars("1.50"), dollars("3"), dollars("0.70"), new BigDecimal("9"),
                new BigDecimal("2")));
    }

    /** 5 pieces of 9 minutes and 2 cuts of 2; 4 units of 1.50, the special among them, 5 pieces of 3 and 2 cuts of 0.70. */
    @Test
    void ratesOfTheProjectTellUnitsLayingAndCutting() {
        UnitRates rates = rates(Optional.empty(), costs("B14"));

        assertThat(rates.minutes("W1", TAKEN)).hasValueSatisfying(
                minutes -> assertThat(minutes).isEqualByComparingTo("49"));
        assertThat(rates.cost("W1", TAKEN)).hasValueSatisfying(
                cost -> assertThat(cost.amount()).isEqualByComparingTo("22.40"));
    }

    @Test
    void whatSomebodySaidOfACutGoesBeforeTheRatesOfTheProject() {
        UnitRates rates = rates(Optional.of(new CutRate(BigDecimal.valueOf(4), Optional.of(dollars("1.25")))),
                costs("B14"));

        assertThat(rates.minutes("W1", TAKEN)).hasValueSatisfying(
                minutes -> assertThat(minutes).isEqualByComparingTo("8"));
        assertThat(rates.cost("W1", TAKEN)).hasValueSatisfying(
                cost -> assertThat(cost.amount()).isEqualByComparingTo("2.50"));
    }

    @Test
    void unitsWithoutARateAreNotPriced() {
        UnitRates rates = rates(Optional.empty(), costs("B16"));

        assertThat(rates.minutes("W1", TAKEN)).isEmpty();
        assertThat(rates.cost("W1", TAKEN)).isEmpty();
    }
}
