package org.coursewright.takeoff.cost;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

import org.coursewright.measure.Money;

/**
 * Scenarios side by side; the first is what the others are compared with.
 *
 * @param scenarios at least one, all in one currency
 */
public record ScenarioComparison(List<PricedScenario> scenarios) {

    public ScenarioComparison {
        scenarios = List.copyOf(scenarios);
        require(!scenarios.isEmpty(), "There are no scenarios to compare: give at least one.");
        Currency currency = scenarios.get(0).scenario().currency();
        for (PricedScenario priced : scenarios) {
            require(priced.scenario().currency().equals(currency), "Scenario %s is in %s, but %s is in %s: convert it.",
                    priced.scenario().name(), priced.scenario().currency(), scenarios.get(0).scenario().name(),
                    currency);
        }
    }

    /** @return for each element any scenario has, its total in each scenario, in their order */
    public SortedMap<String, List<Money>> byElement() {
        return side(PricedScenario::byElement);
    }

    /** @return for each trade any scenario has, its total in each scenario, in their order */
    public SortedMap<String, List<Money>> byTrade() {
        return side(PricedScenario::byTrade);
    }

    /** @return totals, in the order of the scenarios */
    public List<Money> totals() {
        return scenarios.stream().map(scenario -> scenario.total().total()).toList();
    }

    /** @return by how much each total is above the first; the first is zero */
    public List<Money> differences() {
        List<Money> totals = totals();
        return totals.stream().map(total -> total.minus(totals.get(0))).toList();
    }

    private SortedMap<String, List<Money>> side(Function<PricedScenario, SortedMap<String, CostBreakdown>> grouping) {
        List<SortedMap<String, CostBreakdown>> columns = scenarios.stream().map(grouping).toList();
        SortedSet<String> keys = new TreeSet<>();
        columns.forEach(column -> keys.addAll(column.keySet()));
        CostBreakdown none = CostBreakdown.zero(scenarios.get(0).scenario().currency());
        SortedMap<String, List<Money>> rows = new TreeMap<>();
        for (String key : keys) {
            List<Money> row = new ArrayList<>();
            columns.forEach(column -> row.add(column.getOrDefault(key, none).total()));
            rows.put(key, Collections.unmodifiableList(row));
        }
        return rows;
    }
}
