package org.coursewright.core.session;

import java.time.Duration;
import java.util.Objects;

/**
 * How a session works.
 *
 * @param store reads and writes the project file
 * @param journalDelay how long edits may wait before they are written to the recovery journal, not negative; together
 *        with the time of one write it bounds what a kill can lose
 */
public record SessionSettings(ProjectStore store, Duration journalDelay) {

    /** No edit older than 2 s is lost: half a second of waiting, the rest for a slow disk. */
    public static final SessionSettings STANDARD = new SessionSettings(new ProjectStore(), Duration.ofMillis(500));

    public SessionSettings {
        Objects.requireNonNull(store, "store");
        if (journalDelay.isNegative()) {
            throw new IllegalArgumentException("The delay (%s) must not be negative.".formatted(journalDelay));
        }
    }
}
