package org.coursewright.cli.project;

import org.coursewright.cli.Command;
import org.coursewright.cli.Console;
import org.coursewright.cli.ExitStatus;
import org.coursewright.cli.FormatOption;
import org.coursewright.cli.ProjectArgument;
import org.coursewright.core.session.ProjectFileException;
import org.coursewright.model.project.Project;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;

/** Tells what is in a project. */
@CommandLine.Command(name = "describe", mixinStandardHelpOptions = true, //
        description = "Tells what is in a project: units, rule, storeys, walls, openings.")
final class DescribeCommand implements Command {

    private final Console console;

    @Mixin
    private ProjectArgument project;

    @Mixin
    private FormatOption format;

    DescribeCommand(Console console) {
        this.console = console;
    }

    @Override
    public ExitStatus run() throws ProjectFileException {
        Project loaded = project.load();
        console.result(format.isJson() ? OutlineJson.of(loaded) : new Outline(loaded).text());
        return ExitStatus.DONE;
    }
}
