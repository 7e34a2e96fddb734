package org.coursewright.cli.price;

import java.util.List;
import java.util.Optional;

import org.coursewright.cli.BadInputException;
import org.coursewright.cli.Command;
import org.coursewright.cli.Console;
import org.coursewright.cli.ExitStatus;
import org.coursewright.cli.FindingText;
import org.coursewright.cli.FormatOption;
import org.coursewright.cli.ProjectArgument;
import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.cost.PriceComparison;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Severity;
import org.coursewright.core.session.ProjectFileException;
import org.coursewright.model.project.Project;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prices a project. */
@CommandLine.Command(name = "price", mixinStandardHelpOptions = true, sortOptions = false, //
        description = "Estimates what a project costs, by element and trade, with its range; scenarios side by side.")
final class PriceCommand implements Command {

    private final Console console;

    @Mixin
    private ProjectArgument project;

    @Option(names = "--scenario", paramLabel = "MARK", description = "Lay and price this scenario of the project.")
    private String scenario;

    @Option(names = "--compare", description = "Lay and price every scenario and put them side by side.")
    private boolean compare;

    @Option(names = "--show-me", paramLabel = "LINE", description = "Show how a line came about: its number.")
    private String line;

    @Mixin
    private FormatOption format;

    PriceCommand(Console console) {
        this.console = console;
    }

    @Override
    public ExitStatus run() throws BadInputException, ProjectFileException {
        refuseContradictions();
        Project loaded = project.load();
        refuseUnknownScenario(loaded);
        List<PriceOutcome> prices = prices(loaded);
        String name = Optional.ofNullable(loaded.getName()).orElse("");
        console.result(format.isJson() ? PriceJson.of(name, prices) : text(name, prices));
        return prices.stream().anyMatch(price -> FindingText.count(price.findings(), Severity.ERROR) > 0)
                ? ExitStatus.FINDINGS
                : ExitStatus.DONE;
    }

    private void refuseContradictions() throws BadInputException {
        if (line != null && format.isJson()) {
            throw new BadInputException("--show-me writes text; JSON tells how every line came about. Leave one out.");
        }
        if (compare && (line != null || scenario != null)) {
            throw new BadInputException(
                    "--compare puts all scenarios side by side. Leave out --scenario and --show-me.");
        }
    }

    private void refuseUnknownScenario(Project loaded) throws BadInputException {
        List<String> known = PriceResults.scenarios(loaded);
        if (scenario != null && !known.contains(scenario)) {
            throw new BadInputException("--scenario: There is no scenario \"%s\". %s".formatted(scenario,
                    known.isEmpty()
                            ? "The project has none."
                            : "Scenarios are %s.".formatted(String.join(", ", known))));
        }
    }

    private List<PriceOutcome> prices(Project loaded) throws BadInputException {
        DerivationGraph results = new DerivationGraph(loaded);
        try {
            refuseInvalid(results.get(ProjectResults.CHECK).findings());
            if (compare) {
                return results.get(PriceResults.COMPARISON).prices();
            }
            if (scenario == null) {
                return List.of(results.get(PriceResults.PRICE));
            }
            PriceComparison both = results.get(PriceResults.comparison(scenario));
            return List.of(both.prices().get(1));
        } finally {
            results.close();
        }
    }

    private String text(String name, List<PriceOutcome> prices) throws BadInputException {
        if (compare) {
            return new ComparisonTable(name, new PriceComparison(prices)).text();
        }
        return line == null
                ? new PriceTable(name, prices.get(0)).text()
                : new ShownPrice(prices.get(0), line).text();
    }

    /** Part of a building must not be taken for the whole. */
    private void refuseInvalid(List<Finding> findings) throws BadInputException {
        List<String> invalid = findings.stream().filter(finding -> finding.severity() == Severity.INVALID)
                .map(finding -> project.file() + ": " + FindingText.line(finding)).toList();
        if (!invalid.isEmpty()) {
            throw new BadInputException(invalid);
        }
    }
}
