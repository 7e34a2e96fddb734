package org.coursewright.workbench;

import org.coursewright.core.session.ProjectSession;

/** Is told what happens to the open projects. */
@FunctionalInterface
public interface OpenProjectsListener {

    /** What can happen to a project. */
    enum Change {
        /** It has been opened. */
        OPENED,
        /** Its model, undo history or unsaved edits have changed. */
        EDITED,
        /** What is not saved could not be kept against a crash; it is tried again. */
        JOURNAL_FAILED,
        /** It is now the one that undo, redo and save work on. */
        ACTIVATED,
        /** It has been closed; its model may still be read. */
        CLOSED
    }

    /**
     * Called after the fact, in the user interface thread.
     *
     * @param change what happened
     * @param session to which project
     */
    void projectChanged(Change change, ProjectSession session);
}
