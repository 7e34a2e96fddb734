package org.coursewright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

import org.coursewright.measure.Length;
import org.coursewright.measure.Money;
import org.coursewright.measure.Progress;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.cost.CostKind;
import org.coursewright.takeoff.cost.CostLine;
import org.coursewright.takeoff.cost.CostScenario;
import org.coursewright.takeoff.cost.ElementTable;
import org.coursewright.takeoff.cost.MarkUp;
import org.coursewright.takeoff.cost.PricedScenario;
import org.coursewright.takeoff.cost.Rate;
import org.coursewright.takeoff.labour.Crew;
import org.coursewright.takeoff.labour.HeightFactors;
import org.coursewright.takeoff.labour.LabourTask;
import org.coursewright.takeoff.labour.Productivity;
import org.coursewright.takeoff.labour.WorkPortion;
import org.coursewright.takeoff.mix.Density;
import org.coursewright.takeoff.mix.Ingredient;
import org.coursewright.takeoff.mix.Measure;
import org.coursewright.takeoff.mix.MixFigures;
import org.coursewright.takeoff.mix.MixPart;
import org.coursewright.takeoff.mix.MixRecipe;
import org.coursewright.takeoff.mix.Moisture;
import org.coursewright.takeoff.mix.Water;
import org.coursewright.takeoff.nesting.CutPlanner;
import org.coursewright.takeoff.quantities.BuildingQuantities;
import org.coursewright.takeoff.quantities.BuildingTakeoff;
import org.coursewright.takeoff.quantities.JointFill;
import org.coursewright.takeoff.quantities.LaidCourse;
import org.coursewright.takeoff.quantities.LaidPiece;
import org.coursewright.takeoff.quantities.LaidRun;
import org.coursewright.takeoff.quantities.LaidWall;
import org.coursewright.takeoff.quantities.MortarRule;
import org.coursewright.takeoff.quantities.TakeoffFigures;
import org.coursewright.takeoff.quantities.UnitRule;
import org.coursewright.takeoff.quantities.UnitShape;
import org.coursewright.takeoff.range.CostRange;
import org.coursewright.takeoff.range.CostSimulation;
import org.coursewright.takeoff.range.Pert;
import org.coursewright.takeoff.range.UncertainLine;
import org.junit.jupiter.api.Test;

/**
 * All parts in a row, as the translator of a project uses them: a free wall of ten courses of ten blocks, 2.99 m long.
 *
 * <p>By hand: 100 blocks and 5 % breakage are 105. A course has 4.186 L of mortar in its bed and 1.134 L in nine head joints;
 * ten have 53.2 L, with 25 % waste 66.5 L. At 1:3, 2.681284 m³ take 1506 kg of cement, so 66.5 L take 37.351 kg. At 240 blocks
 * in a day of 8 hours the crew works 3 h 20 min: two masons 6.667 h, three tenders 10 h. 105 × 1.20 + 37.351 × 0.30 + 6.667 ×
 * 30 + 10 × 20 = 537.21.
 */
class FromWallToRangeTest {

    private static final UnitShape BLOCK = new UnitShape("block", mm(290), mm(140), mm(90));

    @Test
    void figuresOfEveryPartLeadToTheCostWorkedByHand() {
        PricedScenario priced = price();
        assertThat(priced.isComplete()).isTrue();
        assertThat(priced.lines()).extracting(line -> line.cost().total().rounded().toString()).containsExactly(
                "126.00 USD", "11.21 USD", "200.00 USD", "200.00 USD");
        assertThat(priced.total().total().rounded()).hasToString("537.21 USD");
        assertThat(priced.lines()).allSatisfy(line -> assertThat(line.line().trace().inputs()).isNotEmpty());
    }

    /** Each line from 10 % less to 20 % more: 10 % of a sixth more on average. */
    @Test
    void rangeLiesAroundTheCost() {
        List<UncertainLine> lines = price().lines().stream().map(line -> new UncertainLine(line.line().id(), line.rate()
                .kind().name(), Pert.of(0.9, 1, 1.2).times(line.cost().total().amount().doubleValue()))).toList();
        CostRange range = new CostSimulation(lines, Map.of("LABOUR", 0.8), 20_000, 1).run(Progress.NONE);
        assertThat(range.mean()).isCloseTo(537.21 * 6.1 / 6, within(1.0));
        assertThat(range.percentile(0.1)).isLessThan(range.percentile(0.5));
        assertThat(range.percentile(0.8)).isBetween(range.percentile(0.5), 537.21 * 1.2);
        assertThat(range.sources().get(0).name()).isEqualTo("LABOUR");
    }

    private static PricedScenario price() {
        BuildingQuantities quantities = new BuildingTakeoff(new MortarRule("mortar", Fraction.of("0.25"), "mortar",
                Fraction.of("0.25"), JointFill.FULL), Map.of("block", new UnitRule(mm(4), false, Fraction.of("0.05"))),
                new CutPlanner()).measure(List.of(wall()), Progress.NONE);
        List<CostLine> lines = new ArrayList<>();
        add(lines, "block", ordered(quantities, "units.ordered"));
        add(lines, "cement", MixFigures.of(mortar().amountsFor(quantities.mortars().get(0).ordered())).get(0));
        List<Figure> hours = laying(quantities).figures();
        add(lines, "mason", hours.get(1));
        add(lines, "tender", hours.get(2));
        return new CostScenario("wall", Currency.getInstance("USD"), lines, List.of(rate("block", CostKind.MATERIAL,
                "1.20", "H87"), rate("cement", CostKind.MATERIAL, "0.30", "KGM"),
                rate("mason", CostKind.LABOUR,
                        "30.00", "HUR"),
                rate("tender", CostKind.LABOUR, "20.00", "HUR")), MarkUp.NONE,
                ElementTable
                        .uniformat2())
                .price();
    }

    private static Figure ordered(BuildingQuantities quantities, String formula) {
        return TakeoffFigures.of(quantities).stream().filter(figure -> figure.trace().formula().id().equals(formula))
                .findFirst().orElseThrow();
    }

    private static LaidWall wall() {
        LaidRun run = new LaidRun(mm(0), mm(2990), mm(90), false, false, Collections.nCopies(10, LaidPiece.square(mm(
                290), LaidPiece.Kind.WHOLE)));
        return new LaidWall("W1", BLOCK, mm(140), IntStream.rangeClosed(1, 10).mapToObj(number -> new LaidCourse(number,
                mm(90), mm(10), List.of(run))).toList());
    }

    private static MixRecipe mortar() {
        Ingredient cement = new Ingredient("cement", true, Density.of(1506, 1852, 3150), Moisture.DRY);
        Ingredient sand = new Ingredient("sand", false, Density.of(1281, 1600, 2650), Moisture.DRY);
        return new MixRecipe("mortar", Measure.LOOSE_VOLUME, List.of(new MixPart(cement, Fraction.ONE), new MixPart(
                sand, Fraction.of(3))), Water.exactly(Water.Basis.BINDER, Fraction.of(1, 2)), Fraction.ZERO);
    }

    private static LabourTask laying(BuildingQuantities quantities) {
        Productivity pace = Productivity.perDay("lay block", UnitCode.PIECE, Fraction.of(240), Fraction.of(8),
                "common practice, no source");
        Crew crew = new Crew("masons", List.of(new Crew.Member("mason", Fraction.of(2)), new Crew.Member("tender",
                Fraction.of(3))));
        List<WorkPortion> work = quantities.walls().get(0).courses().stream().map(course -> new WorkPortion("W1/"
                + course.course(), mm(100L * course.course()), Fraction.of(course.pieces().total()))).toList();
        return new LabourTask(pace, crew, work, HeightFactors.NONE, Fraction.ONE, Optional.empty());
    }

    private static void add(List<CostLine> lines, String resource, Figure figure) {
        lines.add(new CostLine(resource, resource, figure.quantity(), "B2010", "masonry", figure.trace()));
    }

    private static Rate rate(String resource, CostKind kind, String price, String unit) {
        return new Rate(resource, kind, new Money(new BigDecimal(price), Currency.getInstance("USD")), unit,
                Optional.of(LocalDate.of(2026, 11, 1)), "invented");
    }

    private static Length mm(long millimetres) {
        return Length.ofMillimetres(millimetres);
    }
}
