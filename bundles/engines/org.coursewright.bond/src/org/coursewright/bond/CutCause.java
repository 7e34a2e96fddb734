package org.coursewright.bond;

import java.util.Objects;

/** What forces pieces of a run to be cut. */
public sealed interface CutCause {

    /** @return how many pieces are cut for it, at least 1 */
    int cuts();

    /** The pieces lie wholly or partly under the slope of a gable. */
    record Rake(int cuts) implements CutCause {
    }

    /**
     * The run has such a length and ends such that no order and choice of pieces fills it with fewer cuts, whatever the
     * courses above and below; proven.
     *
     * @param sparing the nearest lengths that need fewer cuts
     */
    record RunLength(int cuts, NearestLengths sparing) implements CutCause {
        public RunLength {
            Objects.requireNonNull(sparing, "sparing");
        }
    }

    /** What is pinned: the run alone could be filled without these cuts, but not as it is pinned; proven. */
    record Pinned(int cuts) implements CutCause {
    }

    /**
     * The turn of the walls that meet at one of its ends, or interrupt it: if the other wall ran through there in this
     * course, the run could be filled with so many cuts fewer; as it is, it cannot. Proven for the run alone; what the
     * other course of the corner would then need is not weighed.
     *
     * @param meeting id of the meeting
     * @param sparing the nearest lengths that need fewer cuts with the turn as it is
     */
    record Turn(int cuts, String meeting, NearestLengths sparing) implements CutCause {
        public Turn {
            Objects.requireNonNull(meeting, "meeting");
            Objects.requireNonNull(sparing, "sparing");
        }
    }

    /**
     * The run alone could be filled without these cuts; they keep the laps with the courses below and above.
     *
     * @param askedBy which courses, as they are laid, leave no filling with fewer cuts
     * @param proven whether no layout of the wall as a whole does with fewer cuts; if not, fewer might be found
     */
    record Lap(int cuts, Neighbours askedBy, boolean proven) implements CutCause {
        public Lap {
            Objects.requireNonNull(askedBy, "askedBy");
        }
    }

    /** The courses beside a run that ask for cuts; proven, unless undecided. */
    enum Neighbours {
        /** The course below does. */
        BELOW,
        /** The course above does. */
        ABOVE,
        /** Each of them does by itself. */
        EACH,
        /** Neither does by itself, but both together. */
        TOGETHER,
        /** Fewer cuts might do, or it would take too long to find out. */
        UNDECIDED
    }
}
