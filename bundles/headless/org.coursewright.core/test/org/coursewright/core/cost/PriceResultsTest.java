package org.coursewright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.derive.Derived;
import org.coursewright.core.finding.Finding;
import org.coursewright.measure.Money;
import org.coursewright.model.building.Bond;
import org.coursewright.model.estimate.EstimateFactory;
import org.coursewright.model.estimate.RateKind;
import org.coursewright.model.estimate.Scenario;
import org.coursewright.model.estimate.Uncertainty;
import org.coursewright.model.estimate.WallChoice;
import org.coursewright.model.project.ProjectFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PriceResultsTest {

    private final PricedRoom room = new PricedRoom();

    /**
     * By hand: 1344 units × 1.50 = 2016; mortar 4.282407 ft³ × 10 = 42.824074 and 81.365741 × 8 = 650.925926, together
     * 2709.75 of material. Scaffold: one lift of 1.5 m along four walls of 242 in = 36.8808 m² × 2 = 73.7616. Laying 1280 ÷
     * 20 = 64 h: 64 × 30 = 1920 and 128 × 20 = 2560. Tax 270.975; overhead 10 % of 7534.4866 = 753.44866; contingency 5 % of
     * 8287.93526 = 414.396763; total 8702.332023.
     */
    @Test
    void roomIsPricedAsWorkedByHand() {
        CostSums total = price().total();
        assertThat(total.material().amount()).isCloseTo(new BigDecimal("2709.75"), within(new BigDecimal("1e-6")));
        assertThat(total.plant().amount()).isCloseTo(new BigDecimal("73.7616"), within(new BigDecimal("1e-9")));
        assertThat(total.labour().amount()).isCloseTo(new BigDecimal("4480"), within(new BigDecimal("1e-6")));
        assertThat(total.tax().amount()).isCloseTo(new BigDecimal("270.975"), within(new BigDecimal("1e-6")));
        assertThat(total.overhead().amount()).isCloseTo(new BigDecimal("753.44866"), within(new BigDecimal("1e-6")));
        assertThat(total.contingency().amount()).isCloseTo(new BigDecimal("414.396763"), within(new BigDecimal(
                "1e-6")));
        assertThat(total.total().amount()).isCloseTo(new BigDecimal("8702.332023"), within(new BigDecimal("1e-6")));
        assertThat(price().isComplete()).isTrue();
    }

    /** Property: whatever the prices and elements, lines, elements and trades each add up to the total to the last digit. */
    @Test
    void partsEqualTheWholeInExactArithmetic() {
        Random random = new Random(7);
        for (int round = 0; round < 20; round++) {
            room.estimate().getRates().forEach(rate -> rate.setPrice(new Money(BigDecimal.valueOf(random.nextInt(1,
                    100_000), random.nextInt(5)), rate.getPrice().currency())));
            room.wall(round % 4).setElement(round % 2 == 0 ? "C1010" : "G2040");
            room.rate("tender").setTrade(round % 3 == 0 ? "labourers" : "");
            PriceOutcome price = price();
            BigDecimal whole = price.total().total().amount();
            assertThat(price.lines()).hasSizeGreaterThan(6);
            assertThat(sum(price.lines().stream().map(line -> line.priced().orElseThrow().cost())))
                    .isEqualByComparingTo(
                            whole);
            assertThat(sum(price.byElement().stream().map(GroupSum::cost))).isEqualByComparingTo(whole);
            assertThat(sum(price.byTrade().stream().map(GroupSum::cost))).isEqualByComparingTo(whole);
            CostSums total = price.total();
            assertThat(total.direct().plus(total.tax()).plus(total.overhead()).plus(total.contingency()))
                    .isEqualTo(total
                            .total());
        }
    }

    private static BigDecimal sum(Stream<CostSums> parts) {
        return parts.map(cost -> cost.total().amount()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Test
    void unitsSharedAmongElementsAddUpToTheOrder() {
        room.wall(0).setElement("C1010");
        List<PriceLine> units = price().lines().stream().filter(line -> line.resource().work() == Work.UNITS).toList();
        assertThat(units).extracting(line -> line.resource().amount().quantity().value().intValueExact())
                .containsExactly(336, 1008);
    }

    @ParameterizedTest
    @CsvSource({"-1 USD,H87,negative", "1.50 EUR,H87,EUR", "1.50 USD,ZZ9,ZZ9", "1.50 USD,MTQ,is counted in H87"})
    void badRateIsToldOnItsLineAndByTheCheck(String price, String unit, String told) {
        room.rate("B14").setPrice(Money.fromStored(price));
        room.rate("B14").setUnitCode(unit);
        PriceOutcome outcome = price();
        PriceLine line = outcome.lines().get(0);
        assertThat(line.resource().resource()).isEqualTo("B14");
        assertThat(line.priced()).isEmpty();
        assertThat(line.problem().orElseThrow()).contains(told);
        assertThat(outcome.isComplete()).isFalse();
        assertThat(outcome.findings()).extracting(finding -> finding.element().name()).contains("line 1");
        assertThat(outcome.lines().stream().skip(1)).allSatisfy(other -> assertThat(other.priced()).isPresent());
    }

    @Test
    void missingRateIsToldOnItsLine() {
        room.estimate().getRates().remove(room.rate("scaffold"));
        PriceLine line = price().lines().stream().filter(each -> each.resource().resource().equals("scaffold"))
                .findFirst()
                .orElseThrow();
        assertThat(line.problem()).contains("scaffold has 0 rates: give it one.");
    }

    @ParameterizedTest
    @CsvSource({"-1 USD,H87,rate.negative", "1.50 EUR,H87,rate.currency", "1.50 USD,ZZ9,rate.unit"})
    void checkFindsBadRates(String price, String unit, String code) {
        room.rate("B14").setPrice(Money.fromStored(price));
        room.rate("B14").setUnitCode(unit);
        List<Finding> findings = get(ProjectResults.CHECK).findings();
        assertThat(findings).filteredOn(finding -> finding.code().equals(code)).singleElement().satisfies(
                finding -> assertThat(finding.element().name()).isEqualTo("rate B14"));
    }

    @Test
    void scenarioCostsWhatTheBuildingCostsThatIsLaidLikeIt() {
        Scenario headers = EstimateFactory.eINSTANCE.createScenario();
        headers.setMark("headers");
        WallChoice choice = EstimateFactory.eINSTANCE.createWallChoice();
        choice.getWalls().addAll(List.of(room.wall(0), room.wall(2)));
        choice.setBond(Bond.HEADER);
        headers.getWallChoices().add(choice);
        room.estimate().getScenarios().add(headers);
        room.rate("B14 171.45 mm", RateKind.MATERIAL, "1 USD", "H87");
        PriceComparison both = get(PriceResults.COMPARISON);
        assertThat(both.prices()).extracting(PriceOutcome::scenario).containsExactly("as planned", "headers");
        assertThat(get(PriceResults.scenario("headers")).prices()).as("alone").containsExactly(both.prices().get(1));
        assertThat(get(PriceResults.scenario("nothing of the kind")).prices()).isEmpty();

        choice.getWalls().forEach(wall -> wall.setBond(Bond.HEADER));
        PriceOutcome really = price();
        assertThat(both.prices().get(1).total()).isEqualTo(really.total());
        assertThat(both.prices().get(0).total()).isNotEqualTo(really.total());
        assertThat(both.differences().get(1)).isEqualTo(really.total().total().minus(both.prices().get(0).total()
                .total()));
    }

    @Test
    void scenarioHasOneResultHoweverOftenItIsAskedFor() {
        assertThat(PriceResults.scenario("headers")).isEqualTo(PriceResults.scenario("headers"))
                .hasSameHashCodeAs(PriceResults.scenario("headers")).isNotEqualTo(PriceResults.scenario("10 in"));
    }

    @Test
    void rangeRisesAndIsTheSameAgain() {
        room.rate("mason").setLowShare(new BigDecimal("0.9"));
        room.rate("mason").setHighShare(new BigDecimal("1.3"));
        PriceRange range = price().range().orElseThrow();
        assertThat(range.p10().amount()).isLessThan(range.p50().amount());
        assertThat(range.p50().amount()).isLessThan(range.p80().amount());
        assertThat(range.p80().amount()).isLessThan(range.p90().amount());
        assertThat(range.lines()).singleElement().satisfies(swing -> assertThat(swing.name()).isEqualTo("mason (lay)"));
        assertThat(price().range()).contains(range);
        // PERT of 0.9, 1, 1.3 on 1920 × 1.1 × 1.05 (D. G. Malcolm and others, 1959): mean (0.9 + 4 + 1.3) ÷ 6
        double certain = 8702.332023 - 2217.6;
        assertThat(range.mean().amount().doubleValue()).isCloseTo(certain + 2217.6 * 6.2 / 6, within(2.0));
    }

    @Test
    void linesOfOneUncertaintyMoveTogether() {
        double apart = deviation(List.of("mason", "tender"), 0);
        double together = deviation(List.of("mason", "tender"), 1);
        // equal shares of 1920 and 2560: √(a² + b²) against a + b
        assertThat(together / apart).isCloseTo((1920 + 2560) / Math.hypot(1920, 2560), within(0.02));
    }

    private double deviation(List<String> trades, int correlation) {
        Uncertainty labour = EstimateFactory.eINSTANCE.createUncertainty();
        labour.setMark("labour " + correlation);
        labour.setCorrelation(BigDecimal.valueOf(correlation));
        room.estimate().getUncertainties().add(labour);
        trades.forEach(trade -> {
            room.rate(trade).setLowShare(new BigDecimal("0.8"));
            room.rate(trade).setHighShare(new BigDecimal("1.2"));
            room.rate(trade).setMovesWith(labour);
        });
        return price().range().orElseThrow().deviation().amount().doubleValue();
    }

    @Test
    void priceFollowsAnEditOfARate() {
        DerivationGraph graph = new DerivationGraph(room.project());
        try {
            Money before = graph.get(PriceResults.PRICE).total().material();
            room.rate("B14").setPrice(Money.fromStored("2.50 USD"));
            graph.modelChanged();
            assertThat(graph.get(PriceResults.PRICE).total().material()).isEqualTo(before.plus(Money.fromStored(
                    "1344.000000000000 USD")));
        } finally {
            graph.close();
        }
    }

    @Test
    void emptyProjectCostsNothing() {
        PriceOutcome price = DerivationGraph.once(ProjectFactory.eINSTANCE.createProject(),
                PriceResults.PRICE);
        assertThat(price.total().total().amount()).isZero();
        assertThat(price.lines()).isEmpty();
    }

    private PriceOutcome price() {
        return get(PriceResults.RANGE);
    }

    private <T> T get(Derived<T> result) {
        return DerivationGraph.once(room.project(), result);
    }
}
