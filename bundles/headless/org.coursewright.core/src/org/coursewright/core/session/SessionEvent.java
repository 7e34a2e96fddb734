package org.coursewright.core.session;

import java.util.List;

import org.eclipse.emf.ecore.EObject;

/**
 * Something that happened to a project in a session.
 *
 * @param session whose
 * @param kind what
 * @param affected elements that a command names as affected, for instance to select them; empty for other kinds
 */
public record SessionEvent(ProjectSession session, Kind kind, List<EObject> affected) {

    /** What can happen. */
    public enum Kind {
        /** A command was executed. */
        EDITED,
        /** A command was undone. */
        UNDONE,
        /** A command was done again. */
        REDONE,
        /** The project was saved. */
        SAVED,
        /** Edits could not be written to the recovery journal since the last event; they are tried again. */
        JOURNAL_FAILED,
        /** The session ended. */
        CLOSED
    }
}
