package org.coursewright.bond.internal.run;

import org.coursewright.bond.RunEnd;

/**
 * What decides how a run may be filled; runs of one shape are filled from one pool of patterns.
 *
 * @param length greater than zero
 * @param start how it begins
 * @param end how it ends
 * @param rakeStart length at the start, at the bottom of the course, above which there is a rake
 * @param rakeEnd the same at the end
 * @param pins what somebody decided about the run
 */
public record RunShape(long length, RunEnd start, RunEnd end, long rakeStart, long rakeEnd, RunPins pins) {

    /** The same run with nothing decided. */
    public RunShape withoutPins() {
        return pins.isEmpty() ? this : new RunShape(length, start, end, rakeStart, rakeEnd, RunPins.NONE);
    }

    /** The same run seen from the other side; pins are left out. */
    public RunShape turned() {
        return new RunShape(length, end, start, rakeEnd, rakeStart, RunPins.NONE);
    }

    /** One if it begins with a joint, else none. */
    public int startJoints() {
        return start == RunEnd.JOINT ? 1 : 0;
    }

    /** One if it ends with a joint, else none. */
    public int endJoints() {
        return end == RunEnd.JOINT ? 1 : 0;
    }

    /** Whether joint {@code index} of so many is one at an end of the run, not between pieces. */
    public boolean isEnd(int index, int joints) {
        return index < startJoints() || index >= joints - endJoints();
    }

    /** Ends at which a piece is cut along a rake. */
    int rakeEnds() {
        return (start == RunEnd.RAKE ? 1 : 0) + (end == RunEnd.RAKE ? 1 : 0);
    }

    /** Whether a rake cuts any of its pieces. */
    public boolean isRaked() {
        return rakeStart > 0 || rakeEnd > 0 || rakeEnds() > 0;
    }
}
