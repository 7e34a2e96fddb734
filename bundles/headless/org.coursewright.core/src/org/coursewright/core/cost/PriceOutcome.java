package org.coursewright.core.cost;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.core.finding.Finding;

/**
 * What a building costs in one scenario: an estimate that rests on its assumptions.
 *
 * @param scenario its mark, or {@link ScenarioName#AS_PLANNED}
 * @param description what is different in it, may be empty
 * @param currency of all money
 * @param lines every resource for every element and work
 * @param total over the lines that have a price
 * @param byElement its parts by ASTM E1557 code
 * @param byTrade its parts by trade
 * @param range how far the total may be off; empty if nothing is uncertain, or if it has not been simulated
 * @param oldestRate day of the oldest rate used, if any has a date
 * @param assumptions what the figures rest on, one sentence each
 * @param findings what is wrong or doubtful, the gravest first; with lines that have no price the total is too low
 */
public record PriceOutcome(String scenario, String description, Currency currency, List<PriceLine> lines,
        CostSums total, List<GroupSum> byElement, List<GroupSum> byTrade, Optional<PriceRange> range,
        Optional<LocalDate> oldestRate, List<String> assumptions, List<Finding> findings) {

    public PriceOutcome {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(description, "description");
        Objects.requireNonNull(currency, "currency");
        lines = List.copyOf(lines);
        Objects.requireNonNull(total, "total");
        byElement = List.copyOf(byElement);
        byTrade = List.copyOf(byTrade);
        Objects.requireNonNull(range, "range");
        Objects.requireNonNull(oldestRate, "oldestRate");
        assumptions = List.copyOf(assumptions);
        findings = List.copyOf(findings);
    }

    /** @return whether every line has a price, so that the total is whole */
    public boolean isComplete() {
        return lines.stream().allMatch(line -> line.priced().isPresent());
    }

    /** @return the same with its range */
    PriceOutcome with(Optional<PriceRange> simulated) {
        return new PriceOutcome(scenario, description, currency, lines, total, byElement, byTrade, simulated,
                oldestRate,
                assumptions, findings);
    }
}
