package org.coursewright.bond;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Length;

/**
 * A height that falls between course lines, and the nearest ones that would fall on one while all other lifts stay.
 *
 * @param mark the height that is missed
 * @param below the nearest lower height, empty if there is none
 * @param above the nearest higher height, empty if there is none
 */
public record MissedMark(LevelMark mark, Optional<Length> below, Optional<Length> above) {

    public MissedMark {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(below, "below");
        Objects.requireNonNull(above, "above");
    }
}
