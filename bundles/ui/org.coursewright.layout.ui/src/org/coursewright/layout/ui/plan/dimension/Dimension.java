package org.coursewright.layout.ui.plan.dimension;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;

/**
 * A length along a face of a wall.
 *
 * @param wall whose face it is
 * @param kind what it is measured between
 * @param opening that gives way when another length is typed; empty if walls do
 * @param far wall at the far end that gives way; empty if the end of the wall itself does, or an opening
 * @param from where it begins, on the face
 * @param to where it ends, on the face
 * @param away from the wall, to where it is drawn
 * @param row counted from the face on, the first is 0
 */
public record Dimension(Wall wall, Kind kind, Optional<Opening> opening, Optional<Wall> far, PlanPoint from,
        PlanPoint to, Heading away, int row) {

    /** What a dimension is measured between. */
    public enum Kind {
        /** Outer start face to outer end face. */
        OVERALL,
        /** Faces of walls, without an opening between them. */
        CLEAR,
        /** The face before an opening, or the opening before it, to its near jamb. */
        TO_JAMB,
        /** The jambs of an opening. */
        WIDTH,
        /** The far jamb of the last opening to the face after it. */
        FROM_JAMB
    }

    public Dimension {
        Objects.requireNonNull(wall, "wall");
        Objects.requireNonNull(kind, "kind");
    }

    /** @return how long it is */
    public Length length() {
        return from.distance(to);
    }
}
