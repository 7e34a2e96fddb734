package org.coursewright.takeoff.cost;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * One way to build and buy, with all that is needed to price it.
 *
 * @param name of the scenario
 * @param currency of all its money
 * @param lines what it takes; no two with the same id
 * @param rates what that costs
 * @param markUp what comes on top
 * @param elements by which costs are sorted
 */
public record CostScenario(String name, Currency currency, List<CostLine> lines, List<Rate> rates, MarkUp markUp,
        ElementTable elements) {

    public CostScenario {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(currency, "currency");
        lines = List.copyOf(lines);
        rates = List.copyOf(rates);
        Objects.requireNonNull(markUp, "markUp");
        Objects.requireNonNull(elements, "elements");
        Set<String> ids = new HashSet<>();
        for (CostLine line : lines) {
            require(ids.add(line.id()), "Scenario %s has two lines %s: name them apart.", name, line.id());
        }
    }

    /** @return its lines with their prices, and those that have none with the reason */
    public PricedScenario price() {
        return new Pricing(this).price();
    }
}
