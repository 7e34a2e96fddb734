package org.coursewright.cli.layout;

import java.util.List;
import java.util.Optional;

import org.coursewright.cli.BadInputException;
import org.coursewright.cli.Command;
import org.coursewright.cli.Console;
import org.coursewright.cli.ExitStatus;
import org.coursewright.cli.FindingText;
import org.coursewright.cli.FormatOption;
import org.coursewright.cli.ProjectArgument;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.display.ProjectFormat;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Severity;
import org.coursewright.core.session.ProjectFileException;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.project.Project;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lays the walls of a project. */
@CommandLine.Command(name = "lay", mixinStandardHelpOptions = true, //
        description = "Lays the walls of a project: courses, runs, joints, pieces and counts.")
final class LayCommand implements Command {

    private final Console console;

    @Mixin
    private ProjectArgument project;

    @Option(names = "--wall", paramLabel = "MARK", description = "Show this wall only; as text, course by course.")
    private String wall;

    @Mixin
    private FormatOption format;

    LayCommand(Console console) {
        this.console = console;
    }

    @Override
    public ExitStatus run() throws BadInputException, ProjectFileException {
        Project loaded = project.load();
        LayoutOutcome outcome = DerivationGraph.once(loaded, ProjectResults.LAYOUT, console.progress());
        refuseInvalid(outcome.findings());
        LayResult all = LayResult.of(Optional.ofNullable(loaded.getName()).orElse(""), outcome);
        LayResult shown = wall == null ? all : all.only(wall);
        console.result(
                format.isJson() ? LayJson.of(shown, ProjectFormat.of(loaded)) : text(shown, ProjectFormat.of(loaded)));
        return FindingText.count(outcome.findings(), Severity.ERROR) > 0 ? ExitStatus.FINDINGS : ExitStatus.DONE;
    }

    private String text(LayResult result, LengthFormat lengths) {
        return wall == null ? new BuildingTable(result, lengths).text() : new WallTable(result, lengths).text();
    }

    /** A building of which a part contradicts itself would be laid in part, which nobody may take for the whole. */
    private void refuseInvalid(List<Finding> findings) throws BadInputException {
        List<String> invalid = findings.stream().filter(finding -> finding.severity() == Severity.INVALID)
                .map(finding -> project.file() + ": " + FindingText.line(finding)).toList();
        if (!invalid.isEmpty()) {
            throw new BadInputException(invalid);
        }
    }
}
