package org.coursewright.cli;

import java.nio.file.Path;

import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.model.project.Project;

import picocli.CommandLine.Parameters;

/** The project that a command reads. */
public final class ProjectArgument {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "The project file (.coursewright).")
    private Path file;

    /** @return the file as typed */
    public Path file() {
        return file;
    }

    /**
     * Reads the project; nobody is kept from it.
     *
     * @return the project
     * @throws ProjectFileException if it cannot be read
     */
    public Project load() throws ProjectFileException {
        return new ProjectStore().load(file);
    }
}
