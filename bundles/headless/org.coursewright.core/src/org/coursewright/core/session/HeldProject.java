package org.coursewright.core.session;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/**
 * A project file that is kept from others as long as this is open.
 *
 * @param files beside the project file
 * @param lock on it
 */
record HeldProject(SessionFiles files, SessionLock lock) {

    /**
     * @param file an existing project file
     * @throws ProjectInUseException if a session, here or elsewhere, has it open
     * @throws ProjectFileException if there is none, or if it cannot be locked
     */
    static HeldProject of(Path file) throws ProjectFileException {
        SessionFiles files = new SessionFiles(realPath(file));
        return new HeldProject(files, SessionLock.acquire(file, files.lock()));
    }

    private static Path realPath(Path file) throws ProjectFileException {
        try {
            return file.toRealPath();
        } catch (IOException e) {
            throw new ProjectFileException(file, "there is no such file. Check its name and folder.", e);
        }
    }

    /** Lets others in. */
    void release() {
        try {
            lock.release();
        } catch (IOException e) {
            throw new UncheckedIOException("The lock file beside the project cannot be deleted. Delete it once no "
                    + "program has the project open.", e);
        }
    }
}
