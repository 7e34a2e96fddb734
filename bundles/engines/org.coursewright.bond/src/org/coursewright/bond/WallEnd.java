package org.coursewright.bond;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * What happens at one end of a wall. Where the wall met does not stand beside a course, because its base lies higher or
 * its top lower, the course ends with a face at the wall's outer end.
 */
public sealed interface WallEnd {

    /** @return the courses of the building in which the wall met stands at this end */
    default Levels beside() {
        return Levels.ALL;
    }

    /** The wall ends in the open: every course ends with a face at the wall's outer end. */
    record Free() implements WallEnd {
    }

    /**
     * The wall ends where other walls end. In courses where it runs through it ends with a face at its outer end; in the
     * others it ends with a joint, so far from its outer end as the wall that runs through there is thick.
     *
     * @param meeting id of the meeting
     * @param setback thickness of the wall met, greater than zero
     * @param beside courses of the building in which the wall met stands there
     */
    record Corner(String meeting, Length setback, Levels beside) implements WallEnd {
        public Corner {
            Objects.requireNonNull(meeting, "meeting");
            Objects.requireNonNull(setback, "setback");
            Objects.requireNonNull(beside, "beside");
        }

        /** Beside a wall that stands there in every course. */
        public Corner(String meeting, Length setback) {
            this(meeting, setback, Levels.ALL);
        }
    }

    /**
     * The wall ends against the side of another and is tied to it: every course ends with a joint at its outer end.
     *
     * @param beside courses of the building in which the wall met stands there
     */
    record Tied(Levels beside) implements WallEnd {
        public Tied {
            Objects.requireNonNull(beside, "beside");
        }

        /** Tied to a wall that stands there in every course. */
        public Tied() {
            this(Levels.ALL);
        }
    }

    /**
     * The wall ends against the side of another and is bonded into it. In courses where it runs through it reaches
     * beyond its outer end to the far side of the other wall and ends there with a face; in the others it ends with a
     * joint at its outer end.
     *
     * @param meeting id of the meeting
     * @param reach thickness of the wall met, greater than zero
     * @param beside courses of the building in which the wall met stands there
     */
    record Bonded(String meeting, Length reach, Levels beside) implements WallEnd {
        public Bonded {
            Objects.requireNonNull(meeting, "meeting");
            Objects.requireNonNull(reach, "reach");
            Objects.requireNonNull(beside, "beside");
        }

        /** Bonded into a wall that stands there in every course. */
        public Bonded(String meeting, Length reach) {
            this(meeting, reach, Levels.ALL);
        }
    }
}
