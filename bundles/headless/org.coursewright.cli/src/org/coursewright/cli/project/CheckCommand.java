package org.coursewright.cli.project;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.coursewright.cli.Command;
import org.coursewright.cli.Console;
import org.coursewright.cli.ExitStatus;
import org.coursewright.cli.FindingText;
import org.coursewright.cli.FormatOption;
import org.coursewright.cli.JsonText;
import org.coursewright.cli.ProjectArgument;
import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Severity;
import org.coursewright.core.session.ProjectFileException;
import org.coursewright.model.project.Project;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;

/** Tells what is wrong or doubtful in a project. */
@CommandLine.Command(name = "check", mixinStandardHelpOptions = true, //
        description = "Tells what is wrong or doubtful in a project, the gravest first.")
final class CheckCommand implements Command {

    private final Console console;

    @Mixin
    private ProjectArgument project;

    @Mixin
    private FormatOption format;

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public ExitStatus run() throws ProjectFileException {
        Project loaded = project.load();
        List<Finding> findings = DerivationGraph.once(loaded, ProjectResults.CHECK, console.progress()).findings();
        console.result(format.isJson() ? json(loaded, findings) : text(findings));
        if (FindingText.count(findings, Severity.INVALID) > 0) {
            return ExitStatus.BAD_INPUT;
        }
        return FindingText.count(findings, Severity.ERROR) > 0 ? ExitStatus.FINDINGS : ExitStatus.DONE;
    }

    private String text(List<Finding> findings) {
        return Stream.concat(Stream.of(project.file() + ": " + FindingText.summary(findings)),
                findings.stream().map(FindingText::line)).collect(Collectors.joining("\n"));
    }

    private static String json(Project project, List<Finding> findings) {
        return JsonText.document("coursewright.check/1", json -> {
            json.member("project", project.getName());
            for (Severity severity : Severity.values()) {
                json.member(severity.word() + "Count", FindingText.count(findings, severity));
            }
            FindingText.write(findings, json);
        });
    }
}
