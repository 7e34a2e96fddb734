package org.coursewright.core.session;

import java.nio.file.Path;

/** Says that somebody else has the project open, and who. */
public final class ProjectInUseException extends ProjectFileException {

    private static final long serialVersionUID = 1L;

    private final transient SessionHolder holder;

    ProjectInUseException(Path file, SessionHolder holder) {
        super(file, "the project is open already, %s. Close it there first, or work on a copy."
                .formatted(holder.description()));
        this.holder = holder;
    }

    /** @return who has it open */
    public SessionHolder holder() {
        return holder;
    }
}
