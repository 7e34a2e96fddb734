package org.coursewright.cli.takeoff;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.coursewright.cli.BadInputException;
import org.coursewright.cli.Command;
import org.coursewright.cli.Console;
import org.coursewright.cli.ExitStatus;
import org.coursewright.cli.FindingText;
import org.coursewright.cli.FormatOption;
import org.coursewright.cli.ProjectArgument;
import org.coursewright.cli.ReportOption;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.core.cost.ResourceLine;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.display.Amount;
import org.coursewright.core.display.ProjectFormat;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Severity;
import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.takeoff.ProjectTakeoff;
import org.coursewright.core.takeoff.TakeoffOutcome;
import org.coursewright.core.takeoff.TakeoffResults;
import org.coursewright.exchange.report.TakeoffTables;
import org.coursewright.model.project.Project;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Takes off the walls of a project. */
@CommandLine.Command(name = "takeoff", mixinStandardHelpOptions = true, //
        description = "Estimates what the walls of a project take: units, mortar, lintels, wall faces.")
final class TakeoffCommand implements Command {

    private final Console console;

    @Mixin
    private ProjectArgument project;

    @Option(names = "--wall", paramLabel = "MARK", description = "Take off this wall only, as if it alone were built.")
    private String wall;

    @Option(names = "--resources", description = "List materials, hours of crews and machines, and all else that it takes too.")
    private boolean resources;

    @Option(names = "--show-me", paramLabel = "LINE", //
            description = "Show how a line came about: its number, or a wall and course such as W1/3 for mortar.")
    private String line;

    @Mixin
    private ReportOption report;

    @Mixin
    private FormatOption format;

    TakeoffCommand(Console console) {
        this.console = console;
    }

    @Override
    public ExitStatus run() throws BadInputException, ProjectFileException {
        if (line != null && format.isJson()) {
            throw new BadInputException("--show-me writes text; JSON tells how every line came about. Leave one out.");
        }
        report.check();
        Project loaded = project.load();
        Taken taken = takeOff(loaded);
        TakeoffOutcome outcome = taken.outcome();
        String name = Optional.ofNullable(loaded.getName()).orElse("");
        report.write(TakeoffTables.of(name, outcome, taken.resources()));
        console.result(format.isJson()
                ? TakeoffJson.of(name, outcome, taken.resources())
                : text(name, taken,
                        new Amount(ProjectFormat.of(loaded))));
        return FindingText.count(outcome.findings(), Severity.ERROR) > 0 ? ExitStatus.FINDINGS : ExitStatus.DONE;
    }

    /**
     * What was asked for.
     *
     * @param outcome the take-off
     * @param resources of the whole building; none of a single wall
     */
    private record Taken(TakeoffOutcome outcome, List<ResourceLine> resources) {
    }

    private Taken takeOff(Project loaded) throws BadInputException {
        DerivationGraph results = new DerivationGraph(loaded);
        try {
            refuseInvalid(results.get(ProjectResults.CHECK, console.progress()).findings());
            if (wall == null) {
                return new Taken(results.get(TakeoffResults.TAKEOFF, console.progress()),
                        results.get(PriceResults.RESOURCES, console.progress()).lines());
            }
            LayoutOutcome layout = results.get(ProjectResults.LAYOUT, console.progress());
            return new Taken(ProjectTakeoff.ofWall(loaded, layout, markIn(layout), console.progress()), List.of());
        } finally {
            results.close();
        }
    }

    private String text(String name, Taken taken, Amount amounts) throws BadInputException {
        return line == null
                ? new TakeoffTable(name, taken.outcome(), resources ? taken.resources() : List.of(), amounts).text()
                : new ShownLine(taken.outcome(), line, amounts).text();
    }

    private String markIn(LayoutOutcome layout) throws BadInputException {
        return layout.faces().stream().map(face -> face.mark()).filter(mark -> mark.equalsIgnoreCase(wall.strip()))
                .findFirst().orElseThrow(() -> new BadInputException("--wall: There is no wall \"%s\". Walls are %s."
                        .formatted(wall, layout.faces().stream().map(face -> face.mark()).limit(50).collect(Collectors
                                .joining(", ")))));
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
