package org.coursewright.bond.internal.run;

import java.util.List;

import org.coursewright.bond.Pin;

/**
 * What somebody decided about a run.
 *
 * @param joints widths that all joints must have; more than one cannot be kept
 * @param pieces pieces that must cover given positions
 */
public record RunPins(List<Long> joints, List<PinnedPiece> pieces) {

    /** Nothing decided. */
    public static final RunPins NONE = new RunPins(List.of(), List.of());

    /**
     * A piece that covers a position.
     *
     * @param at the position, from the start of the run
     * @param length of the piece
     */
    public record PinnedPiece(long at, long length) {
    }

    /** The pins of a wall that concern a run. */
    static RunPins of(List<Pin> pins, int course, long from, long to) {
        if (pins.isEmpty()) {
            return NONE;
        }
        List<Pin> own = pins.stream().filter(pin -> pin.course() == course)
                .filter(pin -> from <= pin.at().units() && pin.at().units() < to).toList();
        return own.isEmpty() ? NONE : new RunPins(joints(own), pieces(own, from));
    }

    private static List<Long> joints(List<Pin> pins) {
        return pins.stream().filter(Pin.OfJoint.class::isInstance).map(Pin.OfJoint.class::cast)
                .map(pin -> pin.joint().units()).distinct().toList();
    }

    private static List<PinnedPiece> pieces(List<Pin> pins, long from) {
        return pins.stream().filter(Pin.OfPiece.class::isInstance).map(Pin.OfPiece.class::cast)
                .map(pin -> new PinnedPiece(pin.at().units() - from, pin.length().units())).toList();
    }

    /** Whether nothing was decided. */
    public boolean isEmpty() {
        return joints.isEmpty() && pieces.isEmpty();
    }

    /** Whether joints that take so much together may be. */
    boolean allows(long jointTotal, int count) {
        return joints.isEmpty() || joints.stream().allMatch(joint -> joint * count == jointTotal);
    }

    /** Whether a filling keeps all pins. */
    public boolean areKept(RunShape shape, Pattern pattern) {
        return isEmpty() || allows(pattern.jointTotal(), pattern.joints())
                && pieces.stream().allMatch(pin -> isKept(pin, shape, pattern));
    }

    private static boolean isKept(PinnedPiece pin, RunShape shape, Pattern pattern) {
        long parts = Math.max(1, pattern.joints());
        long at = shape.startJoints() * pattern.jointTotal();
        for (long length : pattern.pieces()) {
            long to = at + length * parts;
            if (at <= pin.at() * parts && pin.at() * parts < to) {
                return length == pin.length();
            }
            at = to + pattern.jointTotal();
        }
        return false;
    }
}
