package org.coursewright.bond;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Length;

/**
 * What interrupts courses of a wall between two positions. Runs stop at it with a face (a jamb) or with a joint (other
 * masonry, a lintel, a beam).
 *
 * @param kind what it is
 * @param mark the element's mark, for messages
 * @param from where it begins along the wall
 * @param to where it ends along the wall, greater than {@code from}
 * @param firstCourse number of the lowest course it interrupts
 * @param lastCourse number of the highest course it interrupts
 * @param meeting for a bonded tee the meeting in whose through courses alone it interrupts, otherwise empty
 */
public record Obstacle(Kind kind, String mark, Length from, Length to, int firstCourse, int lastCourse,
        Optional<String> meeting) {

    /** What interrupts a course, and how runs end at it. */
    public enum Kind {
        /** A door, window or other hole: runs end with a face. */
        OPENING(RunEnd.FACE),
        /** A lintel with its bearings: runs end with a joint. */
        LINTEL(RunEnd.JOINT),
        /** A bond beam: runs end with a joint. */
        BEAM(RunEnd.JOINT),
        /** A wall bonded in from the side: runs end with a joint. */
        TEE(RunEnd.JOINT);

        private final RunEnd runEnd;

        Kind(RunEnd runEnd) {
            this.runEnd = runEnd;
        }

        /** @return how a run ends at it */
        public RunEnd runEnd() {
            return runEnd;
        }
    }

    public Obstacle {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(meeting, "meeting");
    }
}
