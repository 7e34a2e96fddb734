package org.coursewright.core.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;

/**
 * The files that a session keeps beside a project file.
 *
 * @param project the project file, without symbolic links
 */
record SessionFiles(Path project) {

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss")
            .withZone(ZoneOffset.UTC);

    /** @return the file whose lock says that the project is open */
    Path lock() {
        return hidden(".lock");
    }

    /** @return the file that holds edits that are not saved yet */
    Path journal() {
        return hidden(".journal");
    }

    /**
     * @param now goes into the name
     * @param extension of the name, with its dot
     * @return a name beside the project that no file has yet, such as {@code clinic.recovered-20260302-081500.journal}
     */
    Path recovered(Instant now, String extension) {
        String name = project.getFileName().toString();
        String plain = name.endsWith(ProjectStore.EXTENSION)
                ? name.substring(0, name.length() - ProjectStore.EXTENSION.length())
                : name;
        String stem = plain + ".recovered-" + STAMP.format(now);
        Path candidate = project.resolveSibling(stem + extension);
        for (int i = 2; Files.exists(candidate); i++) {
            candidate = project.resolveSibling(stem + "-" + i + extension);
        }
        return candidate;
    }

    /**
     * Deletes what killed sessions left of files that they were about to write.
     *
     * @param before what is younger stays, for a command without a session may be about to finish it
     * @throws IOException if the folder cannot be read or a file not be deleted
     */
    void removeLeftovers(Instant before) throws IOException {
        AtomicFile.removeLeftovers(project, before);
        AtomicFile.removeLeftovers(journal(), before);
    }

    private Path hidden(String extension) {
        return project.resolveSibling("." + project.getFileName() + extension);
    }
}
