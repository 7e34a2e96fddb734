package org.coursewright.cli.project;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;

import org.coursewright.cli.BadInputException;
import org.coursewright.core.session.ProjectStore;

/**
 * The file that a new project goes into.
 *
 * @param file with the extension of projects
 */
record ProjectTarget(Path file) {

    private static final int LONGEST_NAME = 200;
    private static final Set<String> NO_NAMES = Set.of("", ".", "..", ProjectStore.EXTENSION);

    /**
     * @param typed with or without extension
     * @param mayReplace whether the file may exist already
     * @throws BadInputException if the file cannot be made there
     */
    static ProjectTarget of(Path typed, boolean mayReplace) throws BadInputException {
        if (typed.getFileName() == null || NO_NAMES.contains(typed.getFileName().toString().strip())) {
            throw new BadInputException(
                    "%s: This is no name of a file. Name the project file to make.".formatted(typed));
        }
        String last = typed.getFileName().toString();
        Path file = last.endsWith(ProjectStore.EXTENSION) ? typed : typed.resolveSibling(last + ProjectStore.EXTENSION);
        if (Files.isDirectory(file)) {
            throw new BadInputException("%s: This is a folder. Choose another name for the project.".formatted(file));
        }
        if (!Files.isDirectory(file.toAbsolutePath().getParent())) {
            throw new BadInputException("%s: There is no folder %s. Make it first, or choose another."
                    .formatted(file, file.toAbsolutePath().getParent()));
        }
        if (Files.exists(file) && !mayReplace) {
            throw new BadInputException(
                    "%s: The file exists already. Choose another name, or add --force to replace it.".formatted(file));
        }
        return new ProjectTarget(file);
    }

    /** @return the name that was asked for, or that of the file without its extension */
    String nameOr(Optional<String> wanted) throws BadInputException {
        String last = file.getFileName().toString();
        String name = wanted.orElse(last.substring(0, last.length() - ProjectStore.EXTENSION.length())).strip();
        if (name.length() > LONGEST_NAME || name.codePoints().anyMatch(ProjectTarget::isUnprintable)) {
            throw new BadInputException(
                    "--name: The name must be one line of at most %d characters. Shorten it.".formatted(LONGEST_NAME));
        }
        return name;
    }

    /** What no project file can hold: control characters and halves of characters. */
    private static boolean isUnprintable(int codePoint) {
        int type = Character.getType(codePoint);
        return type == Character.CONTROL || type == Character.SURROGATE || type == Character.UNASSIGNED;
    }
}
