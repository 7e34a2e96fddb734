package org.coursewright.cli.project;

import java.nio.file.Path;
import java.util.Optional;

import org.coursewright.cli.BadInputException;
import org.coursewright.cli.Command;
import org.coursewright.cli.Console;
import org.coursewright.cli.ExitStatus;
import org.coursewright.cli.FormatOption;
import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.exchange.remark.Remark;
import org.coursewright.exchange.schedule.ImportOutcome;
import org.coursewright.exchange.schedule.ImportSettings;
import org.coursewright.exchange.schedule.RuleChoice;
import org.coursewright.exchange.schedule.RuleTextException;
import org.coursewright.exchange.schedule.ScheduleFiles;
import org.coursewright.exchange.schedule.ScheduleImport;
import org.coursewright.measure.LengthFormat;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a project of schedules. */
@CommandLine.Command(name = "new", mixinStandardHelpOptions = true, sortOptions = false, //
        description = "Makes a project of an architect's schedules. Nothing is written if anything is wrong with them.")
final class NewCommand implements Command {

    private final Console console;

    @Parameters(index = "0", paramLabel = "PROJECT", description = "The file to make; .coursewright is added if it is missing.")
    private Path project;

    @Option(names = "--walls", required = true, paramLabel = "FILE", description = "Schedule of walls (CSV).")
    private Path walls;

    @Option(names = "--openings", required = true, paramLabel = "FILE", description = "Schedule of openings (CSV).")
    private Path openings;

    @Option(names = "--units", paramLabel = "FILE", description = "Schedule of masonry units (CSV); without it walls are of built-in sizes.")
    private Path units;

    @Option(names = "--estimate", paramLabel = "FOLDER", description = "Folder of tables that an estimate rests on: materials, mixes, crews, plant, settings, work, rates, beams, finishes, scenarios (CSV).")
    private Path estimate;

    @Option(names = "--display", paramLabel = "in|mm", defaultValue = "in", converter = DisplayUnitConverter.class, //
            description = "What a bare number means and how lengths are shown (default: ${DEFAULT-VALUE}).")
    private LengthFormat display;

    @Option(names = "--rule", paramLabel = "RULE", description = "How walls are laid, such as \"lap=3.5 in,head=3/8 in:1/2 in:3/4 in,bed=3/8 in:1/2 in:5/8 in,shortest=4 in\".")
    private String rule;

    @Option(names = "--name", paramLabel = "NAME", description = "Name of the project (default: that of the file).")
    private String name;

    @Option(names = "--force", description = "Replace the file if it exists.")
    private boolean force;

    @Mixin
    private FormatOption format;

    NewCommand(Console console) {
        this.console = console;
    }

    @Override
    public ExitStatus run() throws BadInputException, ProjectFileException {
        ProjectTarget target = ProjectTarget.of(project, force);
        ImportSettings settings = new ImportSettings(target.nameOr(Optional.ofNullable(name)), display, rule());
        ImportOutcome outcome = new ScheduleImport(settings)
                .read(new ScheduleFiles(walls, openings, Optional.ofNullable(units), Optional.ofNullable(estimate)));
        console.messages(outcome.warnings().stream().map(warning -> "warning: " + warning).toList());
        if (outcome instanceof ImportOutcome.Imported imported) {
            ProjectSession.replace(imported.project(), target.file());
            NewReport report = new NewReport(target.file(), new Contents(imported.project()));
            console.result(format.isJson() ? report.json() : report.text());
            return ExitStatus.DONE;
        }
        ImportOutcome.Refused refused = (ImportOutcome.Refused) outcome;
        throw new BadInputException(refused.errors().stream().map(Remark::toString).toList());
    }

    private RuleChoice rule() throws BadInputException {
        try {
            return rule == null ? RuleChoice.usual(display.unit()) : RuleChoice.parse(rule, display);
        } catch (RuleTextException e) {
            throw new BadInputException("--rule \"%s\": %s".formatted(rule, e.getMessage()));
        }
    }
}
