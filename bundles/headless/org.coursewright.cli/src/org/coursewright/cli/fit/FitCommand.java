package org.coursewright.cli.fit;

import java.util.List;

import org.coursewright.bond.advice.BondAdvisor;
import org.coursewright.bond.advice.Proposal;
import org.coursewright.cli.BadInputException;
import org.coursewright.cli.Command;
import org.coursewright.cli.Console;
import org.coursewright.cli.ExitStatus;
import org.coursewright.cli.FindingText;
import org.coursewright.cli.FormatOption;
import org.coursewright.cli.ProjectArgument;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Severity;
import org.coursewright.core.fit.FitChanges;
import org.coursewright.core.fit.FitOutcome;
import org.coursewright.core.fit.FitSettings;
import org.coursewright.core.fit.ProjectFit;
import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.measure.Progress;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.project.Project;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Proposes changes of dimensions that spare cuts, and makes them if that is wanted. */
@CommandLine.Command(name = "fit", mixinStandardHelpOptions = true, sortOptions = false, //
        description = "Proposes small changes of dimensions that spare cuts, and says what each of them spares.")
final class FitCommand implements Command {

    private final Console console;

    @Mixin
    private ProjectArgument project;

    @Mixin
    private FitOptions options;

    @Option(names = "--apply", description = "Make the proposed changes in the project file.")
    private boolean apply;

    @Mixin
    private FormatOption format;

    FitCommand(Console console) {
        this.console = console;
    }

    @Override
    public ExitStatus run() throws BadInputException, ProjectFileException {
        if (apply) {
            try (ProjectSession session = ProjectSession.open(project.file())) {
                refuseRecovered(session);
                return run(session.project(), outcome -> make(outcome, session));
            }
        }
        return run(project.load(), outcome -> {
            // only proposed
        });
    }

    /** What becomes of the proposals before they are told. */
    private interface Making {
        void make(FitOutcome outcome) throws ProjectFileException;
    }

    private ExitStatus run(Project read, Making making) throws BadInputException, ProjectFileException {
        FitSettings settings = options.settings(read);
        FitOutcome outcome = new ProjectFit(BondAdvisor.standard()).advise(read, settings, Progress.NONE);
        refuseInvalid(outcome.findings());
        making.make(outcome);
        console.result(format.isJson()
                ? FitJson.of(read, settings, outcome)
                : new FitTable(read, outcome, apply).text());
        return FindingText.count(outcome.findings(), Severity.ERROR) > 0 ? ExitStatus.FINDINGS : ExitStatus.DONE;
    }

    private static void make(FitOutcome outcome, ProjectSession session) throws ProjectFileException {
        FitChanges changes = new FitChanges(session.project());
        for (Proposal proposal : outcome.advice().proposals()) {
            for (ProjectCommand command : changes.commands(outcome.advice(), proposal)) {
                session.execute(command);
            }
        }
        if (session.isDirty()) {
            session.save();
        }
    }

    /** Edits that a killed session left behind are for whoever made them to keep or to drop. */
    private void refuseRecovered(ProjectSession session) throws BadInputException {
        if (session.recovery().isPresent()) {
            throw new BadInputException(
                    "%s: There are edits that were never saved. Open the project in the workbench and save or drop them first."
                            .formatted(project.file()));
        }
    }

    /** Advice on part of a building must not be taken for advice on the whole. */
    private void refuseInvalid(List<Finding> findings) throws BadInputException {
        List<String> invalid = findings.stream().filter(finding -> finding.severity() == Severity.INVALID)
                .map(finding -> project.file() + ": " + FindingText.line(finding)).toList();
        if (!invalid.isEmpty()) {
            throw new BadInputException(invalid);
        }
    }
}
