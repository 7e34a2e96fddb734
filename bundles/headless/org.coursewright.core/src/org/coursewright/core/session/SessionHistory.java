package org.coursewright.core.session;

import java.util.List;
import java.util.OptionalInt;

/**
 * The edits of a session as they stand, in the order in which they were made.
 *
 * @param steps what each edit did, in words; those from {@code position} on are taken back
 * @param position how many of them are in effect, 0 for none
 * @param saved the position at which the project is as its file has it; empty if no step leads there
 */
public record SessionHistory(List<String> steps, int position, OptionalInt saved) {

    public SessionHistory {
        steps = List.copyOf(steps);
        if (position < 0 || position > steps.size()) {
            throw new IllegalArgumentException(
                    "The position (%d) must be from 0 to %d.".formatted(position, steps.size()));
        }
    }
}
