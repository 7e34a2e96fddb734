package org.coursewright.bond;

import java.util.Objects;

/** What a run ends at. */
public sealed interface RunBound {

    /** The wall's own end, in the open. */
    record Free() implements RunBound {
    }

    /** The wall's end at a corner. */
    record Corner(String meeting, boolean through) implements RunBound {
        /**
         * @param meeting id of the meeting
         * @param through whether this wall runs through in the run's course
         */
        public Corner {
            Objects.requireNonNull(meeting, "meeting");
        }
    }

    /** The wall's end against the side of a wall that it is tied to. */
    record Tied() implements RunBound {
    }

    /** The wall's end at the side of a wall that it is bonded into. */
    record Bonded(String meeting, boolean through) implements RunBound {
        /**
         * @param meeting id of the meeting
         * @param through whether this wall runs through in the run's course
         */
        public Bonded {
            Objects.requireNonNull(meeting, "meeting");
        }
    }

    /** An opening, a lintel, a beam or a wall bonded in. */
    record Interrupted(Obstacle obstacle) implements RunBound {
        /** @param obstacle what the run ends at */
        public Interrupted {
            Objects.requireNonNull(obstacle, "obstacle");
        }
    }

    /** The slope of a gable. */
    record Raked() implements RunBound {
    }
}
