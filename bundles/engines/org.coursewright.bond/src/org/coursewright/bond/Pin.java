package org.coursewright.bond;

import java.util.Objects;

import org.coursewright.measure.Length;

/** What somebody decided about the run at one place of one course. It is kept exactly, or the run is left unfilled. */
public sealed interface Pin {

    /** @return number of the course */
    int course();

    /** @return a position inside the run, along the wall */
    Length at();

    /** @return the same so much further along the wall */
    Pin moved(Length shift);

    /** All joints of the run are so wide. */
    record OfJoint(int course, Length at, Length joint) implements Pin {
        /** @param joint the joint, within the wall's rule */
        public OfJoint {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(joint, "joint");
        }

        @Override
        public Pin moved(Length shift) {
            return new OfJoint(course, at.plus(shift), joint);
        }
    }

    /** The piece that covers the position is so long. */
    record OfPiece(int course, Length at, Length length) implements Pin {
        /** @param length of the piece: a whole unit, a stocked special or a cut piece that may be cut */
        public OfPiece {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(length, "length");
        }

        @Override
        public Pin moved(Length shift) {
            return new OfPiece(course, at.plus(shift), length);
        }
    }
}
