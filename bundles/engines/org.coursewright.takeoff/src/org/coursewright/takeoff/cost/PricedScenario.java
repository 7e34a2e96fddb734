package org.coursewright.takeoff.cost;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What a scenario costs. Sums are over the lines that could be priced, and are exact.
 *
 * @param scenario that was priced
 * @param lines with their prices, in the order of the scenario
 * @param problems of lines without a price; if there are any, all sums are too low
 */
public record PricedScenario(CostScenario scenario, List<PricedLine> lines, List<PricingProblem> problems) {

    public PricedScenario {
        Objects.requireNonNull(scenario, "scenario");
        lines = List.copyOf(lines);
        problems = List.copyOf(problems);
    }

    /** @return whether every line has a price */
    public boolean isComplete() {
        return problems.isEmpty();
    }

    /** @return all lines together */
    public CostBreakdown total() {
        return lines.stream().map(PricedLine::cost).reduce(CostBreakdown.zero(scenario.currency()),
                CostBreakdown::plus);
    }

    /** @return sums by the code of the element */
    public SortedMap<String, CostBreakdown> byElement() {
        return by(line -> line.line().element());
    }

    /** @return sums by trade */
    public SortedMap<String, CostBreakdown> byTrade() {
        return by(line -> line.line().trade());
    }

    /** @return the day of the oldest rate that was used, if any has a date */
    public Optional<LocalDate> oldestRate() {
        return lines.stream().flatMap(line -> line.rate().asOf().stream()).min(Comparator.naturalOrder());
    }

    private SortedMap<String, CostBreakdown> by(Function<PricedLine, String> group) {
        SortedMap<String, CostBreakdown> sums = new TreeMap<>();
        lines.forEach(line -> sums.merge(group.apply(line), line.cost(), CostBreakdown::plus));
        return sums;
    }
}
