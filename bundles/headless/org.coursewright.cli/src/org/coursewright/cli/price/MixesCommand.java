package org.coursewright.cli.price;

import org.coursewright.cli.BadInputException;
import org.coursewright.cli.Command;
import org.coursewright.cli.Console;
import org.coursewright.cli.ExitStatus;
import org.coursewright.cli.FindingText;
import org.coursewright.cli.FormatOption;
import org.coursewright.cli.ProjectArgument;
import org.coursewright.core.cost.MixSheets;
import org.coursewright.core.display.ProjectFormat;
import org.coursewright.core.finding.Severity;
import org.coursewright.core.session.ProjectFileException;
import org.coursewright.model.project.Project;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;

/** Works out the mixes of a project. */
@CommandLine.Command(name = "mixes", mixinStandardHelpOptions = true, //
        description = "Works out the mixes of a project: parts, masses, a batch for the mixer, what a block takes.")
final class MixesCommand implements Command {

    private final Console console;

    @Mixin
    private ProjectArgument project;

    @Mixin
    private FormatOption format;

    MixesCommand(Console console) {
        this.console = console;
    }

    @Override
    public ExitStatus run() throws BadInputException, ProjectFileException {
        Project loaded = project.load();
        MixSheets mixes = MixSheets.of(loaded);
        console.result(format.isJson() ? MixJson.of(mixes) : MixText.of(mixes, ProjectFormat.of(loaded)));
        return FindingText.count(mixes.findings(), Severity.ERROR) > 0 ? ExitStatus.FINDINGS : ExitStatus.DONE;
    }
}
