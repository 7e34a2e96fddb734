package org.coursewright.takeoff.quantities;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.List;

import org.coursewright.measure.Length;

/**
 * A stretch of a course filled with pieces and equal joints, which add up to its length exactly.
 *
 * @param from where it begins along the wall, at the bottom of the course
 * @param length at the bottom of the course, zero or more
 * @param jointTotal all its head joints together, each an equal share of this; zero or more
 * @param jointAtStart whether it begins with a joint against other masonry
 * @param jointAtEnd whether it ends with a joint against other masonry
 * @param pieces from start to end, at least one
 */
public record LaidRun(Length from, Length length, Length jointTotal, boolean jointAtStart, boolean jointAtEnd,
        List<LaidPiece> pieces) {

    public LaidRun {
        pieces = List.copyOf(pieces);
        require(!pieces.isEmpty(), "The run at %s has no pieces: leave it out or fill it.", from);
        require(jointTotal.signum() >= 0, "The joints of the run at %s add up to %s: they must not be negative.", from,
                jointTotal);
        Length filled = pieces.stream().map(LaidPiece::length).reduce(jointTotal, Length::plus);
        require(filled.equals(length),
                "The run at %s is %s long, but its pieces and joints add up to %s: lay it again.",
                from, length, filled);
        int joints = pieces.size() - 1 + (jointAtStart ? 1 : 0) + (jointAtEnd ? 1 : 0);
        require(joints > 0 || jointTotal.signum() == 0, "The run at %s has no joint, but %s of joints: make it zero.",
                from, jointTotal);
    }

    /** @return how many head joints it has */
    public int jointCount() {
        return pieces.size() - 1 + (jointAtStart ? 1 : 0) + (jointAtEnd ? 1 : 0);
    }

    /** @return how many of its head joints touch a cut piece */
    public int jointsBesideCuts() {
        int count = 0;
        for (int joint = jointAtStart ? 0 : 1; joint < pieces.size() + (jointAtEnd ? 1 : 0); joint++) {
            if (isCut(joint - 1) || isCut(joint)) {
                count++;
            }
        }
        return count;
    }

    private boolean isCut(int piece) {
        return piece >= 0 && piece < pieces.size() && pieces.get(piece).kind() == LaidPiece.Kind.CUT;
    }
}
