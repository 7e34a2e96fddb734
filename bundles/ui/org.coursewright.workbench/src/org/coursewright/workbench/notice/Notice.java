package org.coursewright.workbench.notice;

import java.util.Objects;

import org.coursewright.core.session.ProjectSession;

/**
 * One thing that is said about a project and stays to be seen.
 *
 * @param session of the project; the notice goes when it is closed
 * @param weight how much it matters
 * @param message whole sentences
 * @param untilSaved whether the notice goes as soon as the project is saved; otherwise only somebody takes it away
 */
public record Notice(ProjectSession session, Weight weight, String message, boolean untilSaved) {

    /** How much a notice matters. */
    public enum Weight {
        /** Good to know. */
        NOTE("note"),
        /** Something did not work, and work may be lost. */
        ERROR("error");

        private final String icon;

        Weight(String icon) {
            this.icon = icon;
        }

        /** @return name of the icon that goes with it */
        public String icon() {
            return icon;
        }
    }

    public Notice {
        Objects.requireNonNull(weight, "weight");
        Objects.requireNonNull(message, "message");
    }
}
