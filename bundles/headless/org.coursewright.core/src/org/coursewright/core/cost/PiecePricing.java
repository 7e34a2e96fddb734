package org.coursewright.core.cost;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.coursewright.measure.Length;
import org.coursewright.measure.Money;
import org.coursewright.measure.UnitCode;
import org.coursewright.model.estimate.WorkKind;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.Volume;
import org.coursewright.takeoff.cost.CostKind;
import org.coursewright.takeoff.cost.PricedLine;
import org.coursewright.takeoff.cost.PricedScenario;
import org.coursewright.takeoff.labour.HeightFactors;
import org.coursewright.takeoff.quantities.UnitShape;

/** Prices single units and cuts by the rates of a brief: the thousandth part of a thousand, without learning. */
final class PiecePricing {

    private static final long MANY = 1000;
    private static final BigDecimal MINUTES = BigDecimal.valueOf(60);
    private static final String ELEMENT = "B2010";
    private static final Formula COUNT = new Formula("units.count", "count", "geometry");

    private final CostBrief brief;

    PiecePricing(CostBrief brief) {
        this.brief = brief;
    }

    /** @return costs of a type, or empty if its units, laying or cutting have no price */
    Optional<PieceCosts> of(UnitShape unit) {
        Optional<Priced> whole = unit(unit, unit.length());
        Optional<Priced> laying = price(resources -> resources.addWork(Work.LAY, ELEMENT, "one", Length.ZERO, Fraction
                .of(MANY)));
        Optional<Priced> cut = price(resources -> resources.addWork(Work.CUT, ELEMENT, "one", Length.ZERO, Fraction.of(
                MANY)));
        return whole.flatMap(of -> laying.flatMap(laid -> cut.map(one -> new PieceCosts(of.cost(), laid.cost(), one
                .cost(), laid.minutes(), one.minutes()))));
    }

    /** @return direct cost of a unit or special of a length, bought by its rate or pressed by its volume */
    Optional<Priced> unit(UnitShape unit, Length length) {
        UnitSupply supply = brief.units().getOrDefault(unit.type(), new UnitSupply(false, Optional.empty(), Optional
                .empty()));
        String resource = length.equals(unit.length()) ? unit.type() : UnitResources.special(unit.type(), length);
        if (!supply.made()) {
            return price(resources -> resources.add(resource, ELEMENT, Work.UNITS, Fraction.of(MANY), UnitCode.PIECE,
                    Trace.of(COUNT)));
        }
        return supply.mix().filter(MixBrief::isPressable).flatMap(
                mix -> price(resources -> new PressUse(mix, Volume.of(length, unit.width(), unit.height()), resources)
                        .add(ELEMENT, MANY, List.of(), unit.type())));
    }

    /** A price and the minutes of people in it. */
    record Priced(Money cost, BigDecimal minutes) {
    }

    private Optional<Priced> price(Consumer<Resources> takes) {
        Resources resources = new Resources();
        takes.accept(resources);
        new Hours(withoutLearning(), resources).add();
        if (resources.lines().isEmpty()) {
            return Optional.empty();
        }
        PricedScenario priced = new Pricing(brief).price("one", resources.lines());
        if (!priced.isComplete()) {
            return Optional.empty();
        }
        BigDecimal hours = priced.lines().stream().filter(line -> line.rate().kind() == CostKind.LABOUR).map(
                PricedLine::priced).map(quantity -> quantity.value()).reduce(BigDecimal.ZERO, BigDecimal::add);
        return Optional.of(new Priced(new Money(priced.total().direct().amount().movePointLeft(3), brief.currency()),
                hours.multiply(MINUTES).movePointLeft(3)));
    }

    private Map<WorkKind, TaskBrief> withoutLearning() {
        Map<WorkKind, TaskBrief> tasks = new HashMap<>();
        brief.tasks().forEach((kind, task) -> tasks.put(kind, new TaskBrief(kind, task.crew(), task.plant(), task
                .productivity(), HeightFactors.NONE, task.conditions(),
                Optional
                        .empty(),
                task.range())));
        return tasks;
    }
}
