package org.coursewright.core.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.measure.Money;
import org.coursewright.measure.Progress;
import org.coursewright.model.estimate.WorkKind;
import org.coursewright.takeoff.cost.CostKind;
import org.coursewright.takeoff.cost.PricedLine;
import org.coursewright.takeoff.cost.PricedScenario;
import org.coursewright.takeoff.range.Certain;
import org.coursewright.takeoff.range.CostRange;
import org.coursewright.takeoff.range.CostSimulation;
import org.coursewright.takeoff.range.Driver;
import org.coursewright.takeoff.range.Pert;
import org.coursewright.takeoff.range.Spread;
import org.coursewright.takeoff.range.UncertainLine;

/**
 * How far a priced scenario may be off: every resource and work has a PERT estimate around its cost; rates and hours that
 * share an uncertainty move together.
 */
final class RangeEstimate {

    private static final int DRAWS = 100_000;
    /** Any number; the same gives the same range. */
    private static final long SEED = 1;
    private static final String KNOWN = "what is certain";
    private static final int SHARE_DECIMALS = 4;

    private final CostBrief brief;
    private final Map<String, RateBrief> rates;
    private final List<ResourceLine> resources;
    private final PricedScenario priced;

    RangeEstimate(CostBrief brief, Map<String, RateBrief> rates, List<ResourceLine> resources, PricedScenario priced) {
        this.brief = brief;
        this.rates = rates;
        this.resources = resources;
        this.priced = priced;
    }

    Optional<PriceRange> of(Progress progress) {
        Map<String, Double> costs = new LinkedHashMap<>();
        Map<String, RangeBrief> ranges = new LinkedHashMap<>();
        for (PricedLine line : priced.lines()) {
            ResourceLine resource = resources.get(Integer.parseInt(line.line().id()) - 1);
            RangeBrief range = range(resource, line);
            String name = isCertain(range) ? KNOWN : "%s (%s)".formatted(resource.resource(), resource.work().words());
            costs.merge(name, line.cost().total().amount().doubleValue(), Double::sum);
            ranges.put(name, range);
        }
        if (ranges.values().stream().allMatch(RangeEstimate::isCertain)) {
            return Optional.empty();
        }
        List<UncertainLine> lines = new ArrayList<>();
        ranges.forEach((name, range) -> lines.add(new UncertainLine(name, range.movesWith().orElse(name), spread(costs
                .get(name), range))));
        return Optional.of(range(new CostSimulation(lines, brief.correlation(), DRAWS, SEED).run(progress)));
    }

    private RangeBrief range(ResourceLine resource, PricedLine line) {
        RangeBrief ofRate = Optional.ofNullable(rates.get(resource.resource())).map(RateBrief::range).orElse(
                RangeBrief.CERTAIN);
        boolean hours = line.rate().kind() == CostKind.LABOUR || line.rate().kind() == CostKind.PLANT;
        return hours ? ofTask(resource.work()).times(ofRate) : ofRate;
    }

    private RangeBrief ofTask(Work work) {
        for (WorkKind kind : WorkKind.values()) {
            if (Work.of(kind) == work && brief.tasks().containsKey(kind)) {
                return brief.tasks().get(kind).range();
            }
        }
        return RangeBrief.CERTAIN;
    }

    private static boolean isCertain(RangeBrief range) {
        return range.low().equals(range.high());
    }

    private static Spread spread(double cost, RangeBrief range) {
        return isCertain(range)
                ? new Certain(cost)
                : Pert.of(cost * range.low().toDecimal().doubleValue(), cost, cost * range.high().toDecimal()
                        .doubleValue());
    }

    private PriceRange range(CostRange range) {
        return new PriceRange(money(range.mean()), money(range.standardDeviation()), money(range.percentile(0.1)),
                money(
                        range.percentile(0.5)),
                money(range.percentile(0.8)), money(range.percentile(0.9)), DRAWS, SEED,
                swings(range.lines()), swings(range.sources()));
    }

    private List<PriceRange.Swing> swings(List<Driver> drivers) {
        return drivers.stream().filter(driver -> !driver.name().equals(KNOWN)).map(driver -> new PriceRange.Swing(driver
                .name(), money(driver.low()), money(driver.high()),
                BigDecimal.valueOf(driver.contribution()).setScale(
                        SHARE_DECIMALS, RoundingMode.HALF_UP)))
                .toList();
    }

    private Money money(double amount) {
        return new Money(BigDecimal.valueOf(amount), priced.scenario().currency()).rounded();
    }
}
