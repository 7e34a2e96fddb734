package org.coursewright.cli.price;

import java.nio.file.Path;
import java.util.List;

import org.coursewright.cli.BadInputException;
import org.coursewright.cli.Command;
import org.coursewright.cli.Console;
import org.coursewright.cli.ExitStatus;
import org.coursewright.cli.FormatOption;
import org.coursewright.cli.JsonText;
import org.coursewright.cli.ProjectArgument;
import org.coursewright.core.display.ProjectFormat;
import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.exchange.estimate.RateFile;
import org.coursewright.exchange.remark.Remark;
import org.coursewright.exchange.remark.Remarks;
import org.coursewright.model.edit.command.ReplaceRatesCommand;
import org.coursewright.model.estimate.Rate;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Replaces the rates of a project by a price list. */
@CommandLine.Command(name = "rates", mixinStandardHelpOptions = true, //
        description = "Replaces the rates of a project by a price list. Nothing is changed if anything is wrong with it.")
final class RatesCommand implements Command {

    private static final String SCHEMA = "coursewright.rates/1";

    private final Console console;

    @Mixin
    private ProjectArgument project;

    @Option(names = "--from", required = true, paramLabel = "FILE", description = "Price list (CSV).")
    private Path file;

    @Mixin
    private FormatOption format;

    RatesCommand(Console console) {
        this.console = console;
    }

    @Override
    public ExitStatus run() throws BadInputException, ProjectFileException {
        try (ProjectSession session = ProjectSession.open(project.file())) {
            Remarks remarks = new Remarks();
            List<Rate> rates = new RateFile(file, ProjectFormat.of(session.project())).read(session.project(), remarks);
            if (remarks.hasErrors()) {
                throw new BadInputException(remarks.errors().stream().map(Remark::toString).toList());
            }
            console.messages(remarks.warnings().stream().map(warning -> "warning: " + warning).toList());
            ReplaceRatesCommand command = new ReplaceRatesCommand(session.project(), rates);
            if (command.canExecute()) {
                session.execute(command);
                session.save();
            }
            console.result(result(rates.size()));
        }
        return ExitStatus.DONE;
    }

    private String result(int count) {
        return format.isJson()
                ? JsonText.document(SCHEMA, json -> {
                    json.member("project", project.file().toString());
                    json.member("rates", count);
                })
                : "%s has %d rates now, those of %s.".formatted(project.file(), count, file);
    }
}
