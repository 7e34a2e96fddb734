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
import org.coursewright.cli.ReportOption;
import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.cost.MakeOrCutLine;
import org.coursewright.core.cost.PriceComparison;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.display.ProjectFormat;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Severity;
import org.coursewright.core.session.ProjectFileException;
import org.coursewright.exchange.report.PriceReport;
import org.coursewright.measure.LengthFormat;
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
    private ReportOption report;

    @Mixin
    private FormatOption format;

    PriceCommand(Console console) {
        this.console = console;
    }

    @Override
    public ExitStatus run() throws BadInputException, ProjectFileException {
        refuseContradictions();
        report.check();
        Project loaded = project.load();
        refuseUnknownScenario(loaded);
        Priced priced = price(loaded);
        List<PriceOutcome> prices = priced.prices();
        String name = Optional.ofNullable(loaded.getName()).orElse("");
        report.write(PriceReport.of(name, prices));
        console.result(format.isJson()
                ? PriceJson.of(name, prices, priced.specials())
                : text(name, priced,
                        ProjectFormat.of(loaded)));
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

    /**
     * What was asked for.
     *
     * @param prices one, or all side by side
     * @param specials whether to have them or to cut, for the building as planned only
     */
    private record Priced(List<PriceOutcome> prices, List<MakeOrCutLine> specials) {
    }

    private Priced price(Project loaded) throws BadInputException {
        DerivationGraph results = new DerivationGraph(loaded);
        try {
            refuseInvalid(results.get(ProjectResults.CHECK).findings());
            if (compare) {
                return new Priced(results.get(PriceResults.COMPARISON).prices(), List.of());
            }
            if (scenario == null) {
                return new Priced(List.of(results.get(PriceResults.RANGE)), results.get(PriceResults.MAKE_OR_CUT)
                        .lines());
            }
            PriceComparison both = results.get(PriceResults.comparison(scenario));
            return new Priced(List.of(both.prices().get(1)), List.of());
        } finally {
            results.close();
        }
    }

    private String text(String name, Priced priced, LengthFormat lengths) throws BadInputException {
        if (compare) {
            return new ComparisonTable(name, new PriceComparison(priced.prices())).text();
        }
        PriceOutcome price = priced.prices().get(0);
        return line == null
                ? new PriceTable(name, price, new SpecialsTable(priced.specials(), lengths)).text()
                : new ShownPrice(price, line, lengths).text();
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
