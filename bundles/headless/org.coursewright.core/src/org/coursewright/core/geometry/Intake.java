package org.coursewright.core.geometry;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.coursewright.core.geometry.LeftOut.Reason;
import org.coursewright.measure.Length;

/**
 * Sorts the walls that can be walls from those that cannot.
 *
 * @param lines those that can, in their order
 * @param leftOut the others, in their order
 */
record Intake(List<Line> lines, List<LeftOut> leftOut) {

    static final Length THICKEST = Length.ofMillimetres(10_000);

    private static final Length FARTHEST = Length.ofMillimetres(10_000_000);

    static Intake of(List<CentreLine> walls) {
        List<Line> lines = new ArrayList<>();
        List<LeftOut> leftOut = new ArrayList<>();
        Set<String> marks = new HashSet<>();
        for (CentreLine wall : walls) {
            Optional<Reason> reason = marks.add(wall.mark()) ? reason(wall) : Optional.of(Reason.SAME_MARK);
            reason.ifPresentOrElse(fault -> leftOut.add(new LeftOut(wall.mark(), fault)),
                    () -> lines.add(Line.of(lines.size(), wall)));
        }
        return new Intake(List.copyOf(lines), List.copyOf(leftOut));
    }

    private static Optional<Reason> reason(CentreLine wall) {
        if (Stream.of(wall.fromX(), wall.fromY(), wall.toX(), wall.toY()).anyMatch(Intake::isTooFar)) {
            return Optional.of(Reason.TOO_FAR);
        }
        if (wall.thickness().signum() <= 0 || wall.thickness().isGreaterThan(THICKEST)) {
            return Optional.of(Reason.NO_THICKNESS);
        }
        Line line = Line.of(0, wall);
        return line.from().isWithin(Length.UNITS_PER_MILLIMETRE, line.to())
                ? Optional.of(Reason.NO_LENGTH)
                : Optional.empty();
    }

    private static boolean isTooFar(Length coordinate) {
        return coordinate.isGreaterThan(FARTHEST) || coordinate.isLessThan(FARTHEST.negated());
    }
}
