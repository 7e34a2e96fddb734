package org.coursewright.workbench.internal.export;

import java.nio.file.Path;

import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.notice.Notice;
import org.coursewright.workbench.notice.Notice.Weight;

/**
 * One thing to be written.
 *
 * @param session of the project
 * @param kind what is written
 * @param target file or folder to write to
 */
record Export(ProjectSession session, ExportKind kind, Path target) {

    /** @return the project's file */
    Path file() {
        return session.file();
    }

    /** Writes the project as it is now to another file. */
    void saveProject(Path copy) throws ProjectFileException {
        session.saveCopy(copy);
    }

    boolean isOpenIn(OpenProjects projects) {
        return projects.sessions().contains(session);
    }

    Notice notice(ExportResult result) {
        return new Notice(session, result.written() ? Weight.NOTE : Weight.ERROR, result.message(), false);
    }
}
