package org.coursewright.workbench.internal.export;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What can be written. */
enum ExportKind {
    /** How every wall is laid. */
    LAY(ExportText.lay),
    /** What the walls take. */
    TAKEOFF(ExportText.takeoff),
    /** Setting-out sheets, a file for each wall. */
    SHEETS(ExportText.sheets);

    private final String label;

    ExportKind(String label) {
        this.label = label;
    }

    /** @return the kind of that name, which is also the headless command's */
    static ExportKind named(String command) {
        return valueOf(command.toUpperCase(Locale.ROOT));
    }

    /** @return what it is called in texts */
    String label() {
        return label;
    }

    /** @return the name of the headless command */
    String command() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** @return whether it writes a folder of files; otherwise one file */
    boolean makesFolder() {
        return this == SHEETS;
    }

    /** @return what to run to write a project to a target */
    String[] arguments(Path project, Path target) {
        List<String> options = makesFolder() ? List.of("--out", target.toString()) : List.of("--format", "json");
        return Stream.concat(Stream.of(command(), project.toString()),
                options.stream()).toArray(String[]::new);
    }
}
