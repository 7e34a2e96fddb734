package org.coursewright.bond;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Where walls meet and take turns to run through: one of them in odd courses, another in even ones.
 *
 * @param id unique in the request
 * @param kind which walls may run through
 * @param walls marks of the walls whose ends meet here, at least one; for a tee the wall that ends first, then the
 *        walls that pass or end opposite
 * @param throughOnOdd the wall that runs through in odd courses because somebody decided so, or empty to let the layout
 *        choose
 */
public record Meeting(String id, Kind kind, List<String> walls, Optional<String> throughOnOdd) {

    /** How walls meet. */
    public enum Kind {
        /** Ends meet ends: the first two take turns, others never run through. */
        CORNER,
        /** The first wall ends against the second and is bonded into it: they take turns. */
        TEE
    }

    public Meeting {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(throughOnOdd, "throughOnOdd");
        walls = List.copyOf(walls);
    }
}
