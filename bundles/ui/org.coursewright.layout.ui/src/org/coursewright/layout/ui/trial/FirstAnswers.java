package org.coursewright.layout.ui.trial;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.layout.ui.part.OpeningPlace;

/**
 * How the wall is laid for places that an opening was dragged to, or may be dragged to next, so that it is shown there at
 * once. Those that nobody has asked for the longest are forgotten. May be used from any thread.
 */
final class FirstAnswers {

    /** A wall of 20,000 units takes a megabyte. */
    private static final int KEPT = 64;

    private final Map<OpeningPlace, LayoutOutcome> answers = new LinkedHashMap<>(2 * KEPT, 0.75f, true) {

        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<OpeningPlace, LayoutOutcome> eldest) {
            return size() > KEPT;
        }
    };

    /** How the wall is laid for a place, empty if that is not known. */
    synchronized Optional<LayoutOutcome> of(OpeningPlace place) {
        return Optional.ofNullable(answers.get(place));
    }

    /** Takes note of a first answer, or of a better one. */
    synchronized void keep(OpeningPlace place, LayoutOutcome answer) {
        answers.put(place, answer);
    }
}
