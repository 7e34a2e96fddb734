package org.coursewright.core.session;

import java.nio.file.Path;
import java.util.OptionalInt;

/** Says in plain words why a project file cannot be read, written or used, where in it the fault is and what to do. */
public class ProjectFileException extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient Path file;
    private final int line;
    private final String what;

    /**
     * @param file the project file as the caller named it, not null
     * @param what what is wrong and what to do, whole sentences without the file's name
     */
    public ProjectFileException(Path file, String what) {
        this(file, Place.UNKNOWN, what, null);
    }

    /**
     * @param file the project file as the caller named it, not null
     * @param what what is wrong and what to do, whole sentences without the file's name
     * @param cause the failure behind it
     */
    public ProjectFileException(Path file, String what, Throwable cause) {
        this(file, Place.UNKNOWN, what, cause);
    }

    ProjectFileException(Path file, Place place, String what, Throwable cause) {
        super(file + place.text() + ": " + what, cause);
        this.file = file;
        this.line = place.line();
        this.what = what;
    }

    /** @return the project file as the caller named it */
    public Path file() {
        return file;
    }

    /** @return the same fault in a text that was made from the file, in which places mean nothing to people */
    ProjectFileException afterConversion(int version) {
        return new ProjectFileException(file,
                "after conversion from schema version %d, %s".formatted(version, what), this);
    }

    /** @return the line at which the fault was noticed, counted from 1, if it has one */
    public OptionalInt line() {
        return line < 1 ? OptionalInt.empty() : OptionalInt.of(line);
    }
}
