package org.coursewright.core.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

import org.coursewright.model.project.Project;

/**
 * Reads and writes project files, without locking them: what commands that only read or that make new files use.
 *
 * <p>A project is loaded wholly or not at all, from a file of its own; it is saved so that the file holds either the
 * old or the new state at any moment, even if the power fails. Saving a project that was just loaded gives the same
 * bytes. Instances hold no state that changes and may be shared between threads; a project may not.
 */
public final class ProjectStore {

    /** Ending of the names of project files. */
    public static final String EXTENSION = ".coursewright";

    /** Greatest size of a file that is read (bytes). */
    public static final long LARGEST_FILE = 16L << 20;

    private final MigrationChain migrations;

    /** Reads files of the current schema version only, as there is no older one yet. */
    public ProjectStore() {
        this(List.of());
    }

    /**
     * @param migrations steps from older schema versions, each leading to the next, in any order
     */
    public ProjectStore(List<Migration> migrations) {
        this.migrations = new MigrationChain(migrations);
    }

    /**
     * Reads a project.
     *
     * @param file to read, at most {@link #LARGEST_FILE} bytes
     * @return the project, alone in its resource
     * @throws ProjectFileException if it is missing, damaged, hostile or of a version that cannot be read; the message
     *         names the place and what to do
     */
    public Project load(Path file) throws ProjectFileException {
        return parse(file, readBytes(file));
    }

    /**
     * Writes a project so that the file is replaced as a whole. Elements keep their ids; a project that was never in a
     * file gets random ones, unless {@link ElementIds#seed} gave it others before.
     *
     * @param project to write
     * @param file to make or to replace
     * @throws ProjectFileException if it cannot be written; the old file is then untouched
     */
    public void save(Project project, Path file) throws ProjectFileException {
        store(file, serialise(project, file));
    }

    Project parse(Path file, byte[] content) throws ProjectFileException {
        String text = ProjectText.decode(file, content);
        int version = ProjectScan.versionOf(file, text);
        return version == SchemaVersion.CURRENT
                ? ProjectReader.read(file, text)
                : parseConverted(file, migrations.toCurrent(file, text, version), version);
    }

    private static Project parseConverted(Path file, String text, int version) throws ProjectFileException {
        try {
            if (ProjectScan.versionOf(file, text) != SchemaVersion.CURRENT) {
                throw new ProjectFileException(file, "it is not of the current version. Report this fault.");
            }
            return ProjectReader.read(file, text);
        } catch (ProjectFileException e) {
            throw e.afterConversion(version);
        }
    }

    byte[] serialise(Project project, Path file) throws ProjectFileException {
        return ProjectWriter.write(project, file);
    }

    byte[] readBytes(Path file) throws ProjectFileException {
        try {
            long size = Files.size(file);
            if (size > LARGEST_FILE) {
                throw new ProjectFileException(file, "the file is %d MB long; a project has at most %d MB. "
                        .formatted(size >> 20, LARGEST_FILE >> 20) + "Choose a file that ends in " + EXTENSION + ".");
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw new ProjectFileException(file, "there is no such file. Check its name and folder.", e);
        } catch (IOException e) {
            throw new ProjectFileException(file,
                    "the file cannot be read. Check that it is a file and that you may read it.", e);
        }
    }

    void store(Path file, byte[] content) throws ProjectFileException {
        try {
            AtomicFile.write(file, content);
        } catch (IOException e) {
            throw new ProjectFileException(file, "the project cannot be saved here; what was there is unchanged. "
                    + "Check that the folder exists, that you may write to it and that the disk is not full.", e);
        }
    }
}
