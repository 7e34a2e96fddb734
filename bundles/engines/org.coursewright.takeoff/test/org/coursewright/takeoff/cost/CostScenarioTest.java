package org.coursewright.takeoff.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;
import org.coursewright.takeoff.cost.PricingProblem.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CostScenarioTest {

    private static final Currency USD = Currency.getInstance("USD");
    private static final Trace TRACE = Trace.of(new Formula("given", "given", "test")).from(List.of("W1"));
    private static final MarkUp MARK_UP = new MarkUp(Map.of(CostKind.MATERIAL, new BigDecimal("0.06")), new BigDecimal(
            "0.10"), new BigDecimal("0.05"));

    /**
     * By hand: 1000 blocks at 1.25 are 1250.00; tax of 6 % on material 75.00; overhead of 10 % on 1325.00 is 132.50;
     * contingency of 5 % on 1457.50 is 72.875; together 1530.375. Labour is not taxed: 40 h at 30.00 are 1200.00, 120.00 and
     * 66.00, together 1386.00.
     */
    @Test
    void markUpsFollowInTheirDocumentedOrder() {
        PricedScenario priced = scenario(List.of(line("1", "block", "1000 H87", "B2010", "masonry"), line("2", "mason",
                "40 HUR", "B2010", "masonry")), rate("block", CostKind.MATERIAL, "1.25 USD", "H87"), rate("mason",
                        CostKind.LABOUR, "30.00 USD", "HUR"))
                .price();
        CostBreakdown blocks = priced.lines().get(0).cost();
        assertThat(blocks.tax().amount()).isEqualByComparingTo("75");
        assertThat(blocks.overhead().amount()).isEqualByComparingTo("132.5");
        assertThat(blocks.contingency().amount()).isEqualByComparingTo("72.875");
        assertThat(blocks.total().amount()).isEqualByComparingTo("1530.375");
        assertThat(priced.lines().get(1).cost().total().amount()).isEqualByComparingTo("1386");
        assertThat(priced.total().total().rounded()).hasToString("2916.38 USD");
        assertThat(priced.total().direct(CostKind.LABOUR).amount()).isEqualByComparingTo("1200");
        assertThat(priced.isComplete()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"2500 H87, 10.00 USD, MIL, 25", "3 MTQ, 2.00 USD, LTR, 6000", "27 FTQ, 40.00 USD, YDQ, 40",
            "2000 LBR, 50.00 USD, STN, 50", "90 MIN, 20.00 USD, HUR, 30", "12 FOT, 1.00 USD, MTR, 3.6576"})
    void quantityIsConvertedToTheUnitOfTheRate(String quantity, String price, String unit, String cost) {
        PricedScenario priced = scenario(List.of(line("1", "r", quantity, "B2010", "t")), rate("r", CostKind.PLANT,
                price, unit)).price();
        assertThat(priced.lines().get(0).cost().direct().amount()).isEqualByComparingTo(cost);
    }

    @ParameterizedTest
    @CsvSource({"5 MTQ, B2010, 2.00 EUR, MTQ, CURRENCY_MISMATCH, EUR",
            "5 MTQ, B2010, -2.00 USD, MTQ, NEGATIVE_RATE, -2.00",
            "5 MTQ, B2010, 2.00 USD, XYZ, UNKNOWN_UNIT, XYZ", "5 MTQ, B2010, 2.00 USD, KGM, UNIT_MISMATCH, KGM",
            "5 DAY, B2010, 2.00 USD, HUR, UNIT_MISMATCH, DAY", "-5 MTQ, B2010, 2.00 USD, MTQ, NEGATIVE_QUANTITY, -5",
            "5 MTQ, X9999, 2.00 USD, MTQ, UNKNOWN_ELEMENT, X9999"})
    void badLineIsReportedByIdAndLeftOutOfTheSum(String quantity, String element, String price, String unit, Kind kind,
            String shown) {
        PricedScenario priced = scenario(List.of(line("good", "block", "1 H87", "B2010", "t"), line("bad", "sand",
                quantity, element, "t")), rate("block", CostKind.MATERIAL, "1.00 USD", "H87"), rate("sand",
                        CostKind.MATERIAL, price, unit))
                .price();
        assertThat(priced.problems()).hasSize(1);
        assertThat(priced.problems().get(0).line()).isEqualTo("bad");
        assertThat(priced.problems().get(0).kind()).isEqualTo(kind);
        assertThat(priced.problems().get(0).message()).contains(shown);
        assertThat(priced.lines()).extracting(line -> line.line().id()).containsExactly("good");
        assertThat(priced.isComplete()).isFalse();
    }

    @Test
    void missingAndAmbiguousRatesAreReported() {
        PricedScenario priced = scenario(List.of(line("1", "lime", "1 KGM", "B2010", "t"), line("2", "sand", "1 KGM",
                "B2010", "t")), rate("sand", CostKind.MATERIAL, "1 USD", "KGM"), rate("sand", CostKind.HAULAGE, "2 USD",
                        "KGM"))
                .price();
        assertThat(priced.problems()).extracting(PricingProblem::kind).containsExactly(Kind.NO_RATE,
                Kind.SEVERAL_RATES);
    }

    /** Grouped by element, by trade, by kind or not at all: the same sum, to the last digit. */
    @Test
    void sumsOfPartsEqualTheWholeExactly() {
        Random random = new Random(1557);
        List<String> elements = ElementTable.uniformat2().all().stream().map(Element::code).toList();
        for (int i = 0; i < 100; i++) {
            PricedScenario priced = random(random, elements).price();
            BigDecimal whole = priced.total().total().amount();
            assertThat(sum(priced.byElement().values())).isEqualByComparingTo(whole);
            assertThat(sum(priced.byTrade().values())).isEqualByComparingTo(whole);
            assertThat(sum(priced.lines().stream().map(PricedLine::cost).toList())).isEqualByComparingTo(whole);
            BigDecimal kinds = BigDecimal.ZERO;
            for (CostKind kind : CostKind.values()) {
                kinds = kinds.add(priced.total().direct(kind).amount());
            }
            assertThat(kinds.add(priced.total().tax().amount()).add(priced.total().overhead().amount()).add(priced
                    .total().contingency().amount())).isEqualByComparingTo(whole);
        }
    }

    @Test
    void scenariosStandSideBySide() {
        PricedScenario made = scenario(List.of(line("1", "block", "100 H87", "B2010", "masonry")), rate("block",
                CostKind.MATERIAL, "1 USD", "H87")).price();
        PricedScenario bought = scenario(List.of(line("1", "block", "100 H87", "B2010", "masonry"), line("2", "truck",
                "1 H87", "G1030", "haulier")), rate("block", CostKind.MATERIAL, "2 USD", "H87"), rate("truck",
                        CostKind.HAULAGE, "50 USD", "H87"))
                .price();
        ScenarioComparison comparison = new ScenarioComparison(List.of(made, bought));
        // 100 × 1.06 × 1.10 × 1.05 and 50 × 1.10 × 1.05
        assertThat(comparison.byElement().get("B2010")).extracting(money -> money.rounded().toString()).containsExactly(
                "122.43 USD", "244.86 USD");
        assertThat(comparison.byElement().get("G1030")).extracting(money -> money.rounded().toString()).containsExactly(
                "0.00 USD", "57.75 USD");
        assertThat(comparison.byTrade()).containsOnlyKeys("masonry", "haulier");
        assertThat(comparison.differences()).extracting(money -> money.rounded().toString()).containsExactly("0.00 USD",
                "180.18 USD");
    }

    @Test
    void scenariosInTwoCurrenciesAreNotCompared() {
        PricedScenario dollars = scenario(List.of()).price();
        PricedScenario euros = new CostScenario("euros", Currency.getInstance("EUR"), List.of(), List.of(), MARK_UP,
                ElementTable.uniformat2()).price();
        assertThatThrownBy(() -> new ScenarioComparison(List.of(dollars, euros))).hasMessageContaining("euros")
                .hasMessageContaining("EUR");
    }

    @Test
    void pricedLineShowsWhatWentIntoIt() {
        PricedScenario priced = scenario(List.of(line("1", "block", "2000 H87", "B2010", "t")), rate("block",
                CostKind.MATERIAL, "900 USD", "MIL")).price();
        Trace trace = priced.lines().get(0).trace();
        assertThat(trace.inputs()).extracting(TraceInput::symbol).containsExactly("quantity", "price", "tax",
                "overhead", "contingency");
        assertThat(trace.inputs().get(0).value()).hasToString("2 MIL");
        assertThat(trace.elements()).containsExactly("W1");
        assertThat(priced.oldestRate()).contains(LocalDate.of(2026, 3, 1));
    }

    @Test
    void twoLinesOfOneIdAreRefused() {
        CostLine line = line("1", "block", "1 H87", "B2010", "t");
        assertThatThrownBy(() -> scenario(List.of(line, line))).hasMessageContaining("two lines 1");
    }

    /** ASTM E1557, level 3, from memory. */
    @Test
    void elementsHaveTheirTitles() {
        ElementTable table = ElementTable.uniformat2();
        assertThat(table.find("B2010").map(Element::title)).contains("Exterior Walls");
        assertThat(table.find("C1010").map(Element::title)).contains("Partitions");
        assertThat(table.all()).allMatch(element -> element.code().matches("[A-G][1-9]0[1-9]0"));
    }

    @Test
    void negativeMarkUpIsRefused() {
        assertThatThrownBy(() -> new MarkUp(Map.of(), new BigDecimal("-0.1"), BigDecimal.ZERO)).hasMessageContaining(
                "overhead").hasMessageContaining("-0.1");
    }

    private static CostScenario random(Random random, List<String> elements) {
        List<CostLine> lines = new ArrayList<>();
        List<Rate> rates = new ArrayList<>();
        for (int n = 0; n < 40; n++) {
            String resource = "r" + n;
            lines.add(line("" + n, resource, BigDecimal.valueOf(random.nextInt(1_000_000), random.nextInt(7)) + " FTQ",
                    elements.get(random.nextInt(elements.size())), "t" + random.nextInt(5)));
            rates.add(
                    rate(resource, CostKind.values()[random.nextInt(4)], BigDecimal.valueOf(random.nextInt(100_000), 3)
                            + " USD", random.nextBoolean() ? "MTQ" : "FTQ"));
        }
        return scenario(lines, rates.toArray(Rate[]::new));
    }

    private static BigDecimal sum(Collection<CostBreakdown> parts) {
        return parts.stream().map(part -> part.total().amount()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static CostScenario scenario(List<CostLine> lines, Rate... rates) {
        return new CostScenario("dollars", USD, lines, List.of(rates), MARK_UP, ElementTable.uniformat2());
    }

    private static CostLine line(String id, String resource, String quantity, String element, String trade) {
        return new CostLine(id, resource, Quantity.fromStored(quantity), element, trade, TRACE);
    }

    private static Rate rate(String resource, CostKind kind, String price, String unit) {
        return new Rate(resource, kind, Money.fromStored(price), unit, Optional.of(LocalDate.of(2026, 3, 1)), "test");
    }
}
