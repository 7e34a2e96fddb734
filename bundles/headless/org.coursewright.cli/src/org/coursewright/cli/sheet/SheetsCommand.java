package org.coursewright.cli.sheet;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

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
import org.coursewright.exchange.sheet.Sheet;
import org.coursewright.exchange.sheet.SheetSettings;
import org.coursewright.exchange.sheet.SheetWall;
import org.coursewright.exchange.sheet.SheetWalls;
import org.coursewright.exchange.sheet.file.SheetFolder;
import org.coursewright.exchange.sheet.file.SheetForm;
import org.coursewright.exchange.sheet.layout.SheetLayout;
import org.coursewright.exchange.sheet.page.SheetType;
import org.coursewright.model.project.Project;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes setting-out sheets of walls. */
@CommandLine.Command(name = "sheets", mixinStandardHelpOptions = true, //
        description = "Writes a setting-out sheet for each wall: elevation, marks, joint gauge, pieces and cuts.", //
        footer = {"", "A sheet is no structural design: local building codes and the structural designer have",
                "the last word. Counts are an estimate without waste."})
final class SheetsCommand implements Command {

    private final Console console;

    @Mixin
    private ProjectArgument project;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "Folder to write to; made if missing.")
    private Path out;

    @Option(names = "--wall", paramLabel = "MARK", description = "This wall only.")
    private String wall;

    @Option(names = "--as", paramLabel = "pdf|svg", defaultValue = "pdf", converter = SheetFormReader.class, //
            description = "Kind of file (default: ${DEFAULT-VALUE}); of SVG one for each page.")
    private SheetForm form;

    @Mixin
    private SheetOptions options;

    @Mixin
    private FormatOption format;

    SheetsCommand(Console console) {
        this.console = console;
    }

    @Override
    public ExitStatus run() throws BadInputException, ProjectFileException {
        Project loaded = project.load();
        SheetSettings settings = options.settings(ProjectFormat.of(loaded));
        LayoutOutcome outcome = DerivationGraph.once(loaded, ProjectResults.LAYOUT, console.progress());
        refuseInvalid(outcome.findings());
        SheetLayout layout = new SheetLayout(SheetType.load());
        List<Sheet> sheets = chosen(SheetWalls.of(loaded, outcome)).stream()
                .map(each -> layout.arrange(each, settings)).toList();
        SheetsReport report = new SheetsReport(out, sheets, write(sheets));
        console.result(format.isJson() ? report.json() : report.text());
        return FindingText.count(outcome.findings(), Severity.ERROR) > 0 ? ExitStatus.FINDINGS : ExitStatus.DONE;
    }

    private List<SheetWall> chosen(List<SheetWall> walls) throws BadInputException {
        if (wall == null) {
            return walls;
        }
        List<SheetWall> found = walls.stream().filter(each -> each.mark().equalsIgnoreCase(wall.strip())).toList();
        if (found.isEmpty()) {
            throw new BadInputException("--wall: There is no wall \"%s\". Walls are %s.".formatted(wall,
                    walls.stream().map(SheetWall::mark).limit(50).collect(Collectors.joining(", "))));
        }
        return found;
    }

    private Map<String, List<String>> write(List<Sheet> sheets) throws BadInputException {
        try {
            return new SheetFolder(out).write(sheets, form);
        } catch (IOException e) {
            throw new BadInputException("--out: " + reason(e));
        }
    }

    private String reason(IOException refusal) {
        if (refusal instanceof NoSuchFileException && !Files.isDirectory(out.toAbsolutePath().getParent())) {
            return "There is no folder %s to make %s in. Make it first.".formatted(out.toAbsolutePath().getParent(),
                    out.getFileName());
        }
        if (refusal instanceof FileAlreadyExistsException) {
            return "%s is a file, not a folder. Name a folder.".formatted(out);
        }
        if (refusal instanceof AccessDeniedException) {
            return "%s may not be written to. Name another folder.".formatted(out);
        }
        return "The sheets cannot be written to %s: %s.".formatted(out, refusal.getMessage());
    }

    /** A wall beside one that contradicts itself would be laid as if that one were not there. */
    private void refuseInvalid(List<Finding> findings) throws BadInputException {
        List<String> invalid = findings.stream().filter(finding -> finding.severity() == Severity.INVALID)
                .map(finding -> project.file() + ": " + FindingText.line(finding)).toList();
        if (!invalid.isEmpty()) {
            throw new BadInputException(invalid);
        }
    }
}
