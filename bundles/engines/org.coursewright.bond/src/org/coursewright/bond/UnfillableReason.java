package org.coursewright.bond;

import java.util.Objects;

import org.coursewright.measure.Length;

/** Why nothing fills a run. */
public sealed interface UnfillableReason {

    /**
     * The run is shorter than a single piece and its joints.
     *
     * @param shortestPiece the shortest piece there may be
     * @param joints what the joints at the run's ends take at least, zero between two faces
     */
    record TooShort(Length shortestPiece, Length joints) implements UnfillableReason {
        public TooShort {
            Objects.requireNonNull(shortestPiece, "shortestPiece");
            Objects.requireNonNull(joints, "joints");
        }
    }

    /** It could be filled, but not as somebody decided. */
    record PinNotKept() implements UnfillableReason {
    }

    /**
     * No number of pieces and joints adds up to the run's length.
     *
     * @param least narrowest joint
     * @param most widest joint
     */
    record NothingAddsUp(Length least, Length most) implements UnfillableReason {
        public NothingAddsUp {
            Objects.requireNonNull(least, "least");
            Objects.requireNonNull(most, "most");
        }
    }
}
