package org.coursewright.layout.ui.tests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The demo building of the repository. */
final class Demo {

    private static final Path PLACE = Path.of("releng", "demo", "clinic.coursewright");

    private Demo() {
    }

    /** Copies it into a folder and returns its file. */
    static Path copyInto(Path folder) throws IOException {
        Path here = Path.of("").toAbsolutePath();
        while (!Files.exists(here.resolve(PLACE))) {
            here = here.getParent();
        }
        Files.createDirectories(folder);
        return Files.copy(here.resolve(PLACE), folder.resolve("clinic.coursewright"));
    }
}
