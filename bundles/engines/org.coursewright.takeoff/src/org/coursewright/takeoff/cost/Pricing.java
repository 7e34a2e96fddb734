package org.coursewright.takeoff.cost;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.cost.PricingProblem.Kind;

/** Prices the lines of a scenario, one by one. */
final class Pricing {

    private final CostScenario scenario;
    private final Map<String, List<Rate>> rates = new HashMap<>();
    private final List<PricedLine> priced = new ArrayList<>();
    private final List<PricingProblem> problems = new ArrayList<>();

    Pricing(CostScenario scenario) {
        this.scenario = scenario;
        scenario.rates().forEach(rate -> rates.computeIfAbsent(rate.resource(), key -> new ArrayList<>()).add(rate));
    }

    PricedScenario price() {
        scenario.lines().forEach(this::price);
        return new PricedScenario(scenario, priced, problems);
    }

    private void price(CostLine line) {
        List<Rate> found = rates.getOrDefault(line.resource(), List.of());
        if (found.size() != 1) {
            report(line, found.isEmpty() ? Kind.NO_RATE : Kind.SEVERAL_RATES, "%s has %d rates: give it one.".formatted(
                    line.resource(), found.size()));
        } else if (isSound(line, found.get(0))) {
            convert(line, found.get(0)).ifPresent(quantity -> add(line, found.get(0), quantity));
        }
    }

    private void add(CostLine line, Rate rate, Quantity quantity) {
        Money direct = rate.price().times(quantity.value());
        priced.add(new PricedLine(line, rate, quantity, scenario.markUp().on(rate.kind(), direct)));
    }

    private boolean isSound(CostLine line, Rate rate) {
        int before = problems.size();
        if (scenario.elements().find(line.element()).isEmpty()) {
            report(line, Kind.UNKNOWN_ELEMENT, "Element %s is not in the table of elements: use such as B2010."
                    .formatted(line.element()));
        }
        if (line.quantity().value().signum() < 0) {
            report(line, Kind.NEGATIVE_QUANTITY, "The quantity %s is negative: correct it.".formatted(line
                    .quantity()));
        }
        if (rate.price().amount().signum() < 0) {
            report(line, Kind.NEGATIVE_RATE, "The rate of %s is %s: it must not be negative.".formatted(rate.resource(),
                    rate.price()));
        }
        if (!rate.price().currency().equals(scenario.currency())) {
            report(line, Kind.CURRENCY_MISMATCH, "The rate of %s is %s, but scenario %s is in %s: convert it."
                    .formatted(rate.resource(), rate.price(), scenario.name(), scenario.currency()));
        }
        return problems.size() == before;
    }

    private Optional<Quantity> convert(CostLine line, Rate rate) {
        Optional<UnitCode> unit = UnitCode.find(rate.unitCode());
        if (unit.isEmpty()) {
            report(line, Kind.UNKNOWN_UNIT, "The rate of %s is for the unit %s, which is not known: use such as MTQ."
                    .formatted(rate.resource(), rate.unitCode()));
            return Optional.empty();
        }
        Optional<Quantity> quantity = UnitConversion.convert(line.quantity(), unit.get());
        if (quantity.isEmpty()) {
            report(line, Kind.UNIT_MISMATCH, "%s is counted in %s, but its rate is for %s: give a rate for %s."
                    .formatted(rate.resource(), line.quantity().unitCode(), rate.unitCode(), line.quantity()
                            .unitCode()));
        }
        return quantity;
    }

    private void report(CostLine line, Kind kind, String message) {
        problems.add(new PricingProblem(line.id(), kind, message));
    }
}
