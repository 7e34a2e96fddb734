package org.coursewright.bond;

import java.util.Objects;

import org.coursewright.measure.Length;

/** What happens at one end of a wall. */
public sealed interface WallEnd {

    /** The wall ends in the open: every course ends with a face at the wall's outer end. */
    record Free() implements WallEnd {
    }

    /**
     * The wall ends where other walls end. In courses where it runs through it ends with a face at its outer end; in the
     * others it ends with a joint, so far from its outer end as the wall that runs through there is thick.
     *
     * @param meeting id of the meeting
     * @param setback thickness of the wall met, greater than zero
     */
    record Corner(String meeting, Length setback) implements WallEnd {
        public Corner {
            Objects.requireNonNull(meeting, "meeting");
            Objects.requireNonNull(setback, "setback");
        }
    }

    /** The wall ends against the side of another and is tied to it: every course ends with a joint at its outer end. */
    record Tied() implements WallEnd {
    }

    /**
     * The wall ends against the side of another and is bonded into it. In courses where it runs through it reaches
     * beyond its outer end to the far side of the other wall and ends there with a face; in the others it ends with a
     * joint at its outer end.
     *
     * @param meeting id of the meeting
     * @param reach thickness of the wall met, greater than zero
     */
    record Bonded(String meeting, Length reach) implements WallEnd {
        public Bonded {
            Objects.requireNonNull(meeting, "meeting");
            Objects.requireNonNull(reach, "reach");
        }
    }
}
