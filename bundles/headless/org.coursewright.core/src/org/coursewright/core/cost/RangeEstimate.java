package org.coursewright.core.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.measure.Money;
import org.coursewright.measure.Progress;
import org.coursewright.model.estimate.WorkKind;
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
    private final PriceOutcome price;
    private final Map<String, RangeBrief> rates = new HashMap<>();

    RangeEstimate(CostBrief brief, PriceOutcome price) {
        this.brief = brief;
        this.price = price;
        brief.rates().forEach(rate -> rates.putIfAbsent(rate.rate().resource(), rate.range()));
    }

    /** @return the price with its range, or as it is if nothing is uncertain */
    PriceOutcome priced(Progress progress) {
        return price.with(of(progress));
    }

    private Optional<PriceRange> of(Progress progress) {
        Map<String, Double> costs = new LinkedHashMap<>();
        Map<String, RangeBrief> ranges = new LinkedHashMap<>();
        for (PriceLine line : price.lines()) {
            line.priced().ifPresent(priced -> {
                RangeBrief range = range(line.resource(), priced);
                String name = isCertain(range)
                        ? KNOWN
                        : "%s (%s)".formatted(line.resource().resource(), line.resource().work().words());
                costs.merge(name, priced.cost().total().amount().doubleValue(), Double::sum);
                ranges.put(name, range);
            });
        }
        if (ranges.values().stream().allMatch(RangeEstimate::isCertain)) {
            return Optional.empty();
        }
        List<UncertainLine> lines = new ArrayList<>();
        ranges.forEach((name, range) -> lines.add(new UncertainLine(name, range.movesWith().orElse(name), spread(costs
                .get(name), range))));
        return Optional.of(range(new CostSimulation(lines, brief.correlation(), DRAWS, SEED).run(progress)));
    }

    private RangeBrief range(ResourceLine resource, PriceLine.Priced priced) {
        RangeBrief ofRate = rates.getOrDefault(resource.resource(), RangeBrief.CERTAIN);
        return priced.isForHours() ? ofTask(resource.work()).times(ofRate) : ofRate;
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
        return new Money(BigDecimal.valueOf(amount), price.currency()).rounded();
    }
}
