package org.coursewright.core.cost;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;

import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Findings;
import org.coursewright.core.takeoff.TakeoffLine;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;
import org.coursewright.takeoff.cost.CostBreakdown;
import org.coursewright.takeoff.cost.CostLine;
import org.coursewright.takeoff.cost.CostScenario;
import org.coursewright.takeoff.cost.ElementTable;
import org.coursewright.takeoff.cost.PricedLine;
import org.coursewright.takeoff.cost.PricedScenario;
import org.coursewright.takeoff.cost.PricingProblem;

/** Prices resources by the rates of a brief. */
final class Pricing {

    private final ElementTable elements = ElementTable.uniformat2();
    private final CostBrief brief;
    private final Map<String, RateBrief> rates = new HashMap<>();

    Pricing(CostBrief brief) {
        this.brief = brief;
        brief.rates().forEach(rate -> rates.putIfAbsent(rate.rate().resource(), rate));
    }

    PricedScenario price(String name, List<ResourceLine> resources) {
        List<CostLine> lines = new ArrayList<>();
        for (int i = 0; i < resources.size(); i++) {
            lines.add(line(i + 1, resources.get(i)));
        }
        return new CostScenario(name, brief.currency(), lines, brief.rates().stream().map(RateBrief::rate).toList(),
                brief.markUp(), elements).price();
    }

    private CostLine line(int number, ResourceLine resource) {
        Optional<RateBrief> rate = Optional.ofNullable(rates.get(resource.resource()));
        TakeoffLine amount = resource.amount();
        Trace trace = new Trace(new Formula(amount.formula(), amount.expression(), amount.source()), amount.inputs()
                .stream().map(input -> new TraceInput(input.symbol(), input.value())).toList(), amount.elements());
        return new CostLine(String.valueOf(number), resource.resource(), amount.quantity(),
                rate.flatMap(RateBrief::element).orElse(resource.element()),
                rate.flatMap(RateBrief::trade).orElse(resource.work().trade()), trace);
    }

    /**
     * @param name of the scenario
     * @param resources what it takes
     * @param assumptions what the quantities rest on
     * @param found what was found before
     * @return the price without its range
     */
    PriceOutcome outcome(ScenarioName name, ResourceTakeoff resources, List<String> assumptions, List<Finding> found) {
        PricedScenario priced = price(name.mark(), resources.lines());
        Findings findings = new Findings();
        Set<Finding> all = new LinkedHashSet<>(found);
        all.addAll(brief.findings());
        all.addAll(resources.findings());
        findings.addAll(List.copyOf(all));
        tell(priced.problems(), resources.lines(), findings);
        return new PriceOutcome(name.mark(), name.description(), brief.currency(), lines(resources.lines(), priced),
                CostSums.of(priced.total()), groups(priced.byElement()), groups(priced.byTrade()),
                Optional.empty(), priced.oldestRate(), assumptions, findings.gravestFirst());
    }

    private List<PriceLine> lines(List<ResourceLine> resources, PricedScenario priced) {
        Map<String, PricedLine> byId = new HashMap<>();
        priced.lines().forEach(line -> byId.put(line.line().id(), line));
        Map<String, String> problems = new HashMap<>();
        priced.problems().forEach(problem -> problems.merge(problem.line(), problem.message(), (one, other) -> one + " "
                + other));
        List<PriceLine> lines = new ArrayList<>();
        for (CostLine line : priced.scenario().lines()) {
            int number = Integer.parseInt(line.id());
            lines.add(new PriceLine(number, resources.get(number - 1), line.element(), line.trade(), Optional
                    .ofNullable(byId.get(line.id())).map(Pricing::priced),
                    Optional.ofNullable(problems.get(line
                            .id()))));
        }
        return lines;
    }

    private static PriceLine.Priced priced(PricedLine line) {
        return new PriceLine.Priced(line.rate().kind().name().toLowerCase(Locale.ROOT), line.priced(), line.rate()
                .price(), line.rate().asOf(), line.rate().source(), CostSums.of(line.cost()));
    }

    private List<GroupSum> groups(SortedMap<String, CostBreakdown> sums) {
        List<GroupSum> groups = new ArrayList<>();
        sums.forEach((code, cost) -> groups.add(new GroupSum(code, elements.find(code).map(element -> element.title())
                .orElse(code), CostSums.of(cost))));
        return groups;
    }

    /** One finding for each resource and fault, with the lines that suffer from it. */
    private static void tell(List<PricingProblem> problems, List<ResourceLine> resources, Findings findings) {
        Map<String, List<String>> lines = new LinkedHashMap<>();
        Map<String, PricingProblem> first = new HashMap<>();
        for (PricingProblem problem : problems) {
            String key = resources.get(Integer.parseInt(problem.line()) - 1).resource() + problem.kind();
            lines.computeIfAbsent(key, each -> new ArrayList<>()).add(problem.line());
            first.putIfAbsent(key, problem);
        }
        lines.forEach((key, numbers) -> findings.error("price." + first.get(key).kind().name().toLowerCase(Locale.ROOT)
                .replace('_', '-'),
                Resources.named((numbers.size() == 1 ? "line " : "lines ") + String.join(", ", numbers)),
                first
                        .get(key).message()));
    }
}
