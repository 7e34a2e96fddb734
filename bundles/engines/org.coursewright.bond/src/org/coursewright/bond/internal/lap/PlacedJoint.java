package org.coursewright.bond.internal.lap;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;

/**
 * A head joint at its exact place.
 *
 * @param start where it begins along the wall, times {@code parts}
 * @param end where it ends, times {@code parts}
 * @param parts into how many parts 1/320 mm is divided, at least 1
 * @param place whether it lies between pieces or at an end of its run
 */
record PlacedJoint(long start, long end, int parts, Place place) {

    /** Where in its run a joint lies. */
    enum Place {
        AT_START, BETWEEN, AT_END
    }

    /** The joints of a run from start to end. */
    static List<PlacedJoint> of(Run run) {
        List<PlacedJoint> joints = new ArrayList<>();
        run.joint().ifPresent(joint -> place(run, joint, joints));
        return joints;
    }

    private static void place(Run run, LengthRatio joint, List<PlacedJoint> joints) {
        int parts = joint.count();
        long width = joint.total().units();
        long at = run.from().units() * parts;
        if (run.startsWith() == RunEnd.JOINT) {
            joints.add(new PlacedJoint(at, at + width, parts, Place.AT_START));
            at += width;
        }
        for (int piece = 0; joints.size() < parts; piece++) {
            at += run.pieces().get(piece).length().units() * parts;
            boolean last = piece == run.pieces().size() - 1;
            joints.add(new PlacedJoint(at, at + width, parts, last ? Place.AT_END : Place.BETWEEN));
            at += width;
        }
    }

    /** From the edge of one joint to the nearer edge of the other; less than zero where they overlap. */
    LengthRatio lap(PlacedJoint other) {
        long after = other.start * parts - end * other.parts;
        long before = start * other.parts - other.end * parts;
        return reduced(Math.max(after, before), (long) parts * other.parts);
    }

    private static LengthRatio reduced(long total, long count) {
        long divisor = BigInteger.valueOf(total).gcd(BigInteger.valueOf(count)).longValueExact();
        return new LengthRatio(Length.ofUnits(total / divisor), Math.toIntExact(count / divisor));
    }

    /** Whether the other joint, of the next course, ends at least so far before this one begins. */
    boolean isClearOf(PlacedJoint other, Length least) {
        return start * other.parts - other.end * parts >= least.units() * parts * other.parts;
    }

    /** Whether both lie at ends of their runs that end at the same place against other masonry. */
    boolean isStraightWith(PlacedJoint other) {
        return place == other.place && switch (place) {
            case BETWEEN -> false;
            case AT_START -> start * other.parts == other.start * parts;
            case AT_END -> end * other.parts == other.end * parts;
        };
    }

    /** The middle between this joint and another, to the nearest 1/320 mm. */
    Length middle(PlacedJoint other) {
        long sum = (start + end) * other.parts + (other.start + other.end) * parts;
        long quarters = 4L * parts * other.parts;
        return Length.ofUnits(Math.floorDiv(2 * sum + quarters, 2 * quarters));
    }
}
