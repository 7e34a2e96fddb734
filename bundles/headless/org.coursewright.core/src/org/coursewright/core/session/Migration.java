package org.coursewright.core.session;

import org.w3c.dom.Document;

/** One step from an older form of project files to the next; a file runs through as many as it needs. */
public interface Migration {

    /** @return the schema version this step starts from; it leads to the next whole number */
    int fromVersion();

    /**
     * Rewrites a project of {@link #fromVersion()} into the next version, including the namespace of its root.
     *
     * @param project a namespace-aware document that may be changed in place, not null
     * @return the rewritten document: the same or a new one, not null
     */
    Document migrate(Document project);
}
