package org.coursewright.workbench.internal.history;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.core.session.SessionHistory;

/**
 * A state of a project that one can go to.
 *
 * @param position how many edits are in effect there
 * @param label what the last of them did
 * @param place how it stands to the present state
 * @param saved whether the file has this state
 */
record Step(int position, String label, Place place, boolean saved) {

    /** How a state stands to the present one. */
    enum Place {
        BEFORE, PRESENT, TAKEN_BACK
    }

    /** @return all states of a project, the first as it was opened */
    static List<Step> of(ProjectSession session) {
        SessionHistory history = session.history();
        List<String> labels = Stream.concat(Stream.of(HistoryText.opened), history.steps().stream()).toList();
        return IntStream.range(0, labels.size()).mapToObj(position -> new Step(position, labels.get(position),
                place(position, history.position()), history.saved().orElse(-1) == position)).toList();
    }

    private static Place place(int position, int present) {
        if (position == present) {
            return Place.PRESENT;
        }
        return position < present ? Place.BEFORE : Place.TAKEN_BACK;
    }
}
