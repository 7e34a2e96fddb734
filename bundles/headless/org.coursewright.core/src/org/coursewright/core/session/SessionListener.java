package org.coursewright.core.session;

/** Learns what happens to a project in a session. */
@FunctionalInterface
public interface SessionListener {

    /**
     * Called after the fact, on the thread that edits the session. It may read the project and must not edit it.
     *
     * @param event what happened
     */
    void sessionChanged(SessionEvent event);
}
