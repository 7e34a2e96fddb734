package org.coursewright.core.cost;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Length;

/**
 * Plaster on a wall, copied out of the project.
 *
 * @param type mark of the finish
 * @param wall mark of the wall
 * @param sides how many, 1 or 2
 * @param thickness of all coats
 * @param from lower edge above the base of the wall, or empty for the base
 * @param to upper edge above the base of the wall, or empty for the top
 * @param mix what it is mixed of, if chosen
 */
record PlasterBrief(String type, String wall, int sides, Length thickness, Optional<Length> from,
        Optional<Length> to, Optional<MixBrief> mix) {

    PlasterBrief {
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(wall, "wall");
        Objects.requireNonNull(thickness, "thickness");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(mix, "mix");
    }
}
