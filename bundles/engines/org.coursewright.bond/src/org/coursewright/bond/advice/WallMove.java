package org.coursewright.bond.advice;

import java.util.List;
import java.util.Objects;

import org.coursewright.bond.WallFace;
import org.coursewright.measure.Length;

/**
 * A wall that may move sideways, and what comes of it in the faces of the walls that it meets.
 *
 * @param adjustable the offset of the wall
 * @param planned where it stands
 * @param places where else it may stand, each at another change
 */
public record WallMove(Adjustable adjustable, Length planned, List<Place> places) {

    /**
     * Another place for the wall, all else as planned.
     *
     * @param change how far it moves, not zero
     * @param faces of the walls that change by it, as they are then, with as many courses and the same meetings
     * @param keepClear stretches of these walls where no opening may come then that is not there now
     */
    public record Place(Length change, List<WallFace> faces, List<KeepClear> keepClear) {
        public Place {
            Objects.requireNonNull(change, "change");
            faces = List.copyOf(faces);
            keepClear = List.copyOf(keepClear);
        }
    }

    public WallMove {
        Objects.requireNonNull(adjustable, "adjustable");
        Objects.requireNonNull(planned, "planned");
        places = List.copyOf(places);
        if (adjustable.opening().isPresent() || adjustable.dimension() != Dimension.OFFSET) {
            throw new IllegalArgumentException(
                    "Wall %s: what moves a wall is its offset.".formatted(adjustable.wall()));
        }
    }
}
