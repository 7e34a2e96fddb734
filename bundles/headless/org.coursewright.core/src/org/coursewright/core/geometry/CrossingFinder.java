package org.coursewright.core.geometry;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.core.geometry.Crossing.Kind;
import org.coursewright.measure.Length;

/** Finds walls that run through each other. */
final class CrossingFinder {

    private final Neighbours neighbours;
    private final Nodes nodes;

    CrossingFinder(Neighbours neighbours, Nodes nodes) {
        this.neighbours = neighbours;
        this.nodes = nodes;
    }

    /** @return each pair once, in the order of the lines */
    List<Crossing> find(List<Line> lines) {
        return lines.stream().flatMap(line -> neighbours.of(line).stream().filter(other -> other.order() > line.order())
                .flatMap(other -> between(line, other).stream())).toList();
    }

    private Optional<Crossing> between(Line first, Line second) {
        if (!first.boxIsWithin(Line.JOINED + deepest(first, second), second)) {
            return Optional.empty();
        }
        return overlap(first, second).or(() -> sideBySide(first, second)).or(() -> cross(first, second));
    }

    private Optional<Crossing> cross(Line first, Line second) {
        if (!areOnBothSides(first, second) || !areOnBothSides(second, first) || endsAt(first, second)
                || endsAt(second, first)) {
            return Optional.empty();
        }
        BigInteger numerator = first.from().to(second.from()).cross(second.vector());
        BigInteger denominator = first.vector().cross(second.vector());
        Point at = first.from().towards(first.vector(), numerator.multiply(BigInteger.valueOf(denominator.signum())),
                denominator.abs());
        return Optional.of(crossing(Kind.CROSS, first, second, at));
    }

    private static boolean areOnBothSides(Line line, Line other) {
        return line.vector().cross(line.from().to(other.from())).signum()
                * line.vector().cross(line.from().to(other.to())).signum() < 0;
    }

    private boolean endsAt(Line line, Line other) {
        return nodes.at(line, Place.START).touches(other) || nodes.at(line, Place.END).touches(other);
    }

    private static Optional<Crossing> overlap(Line first, Line second) {
        if (!first.vector().isParallel(second.vector())) {
            return Optional.empty();
        }
        if (!areWithin(Line.JOINED, first, second)) {
            return Optional.empty();
        }
        boolean common = endsInside(first, second) || endsInside(second, first) || areSame(first, second);
        return common
                ? Optional.of(crossing(Kind.OVERLAP, first, second, beginning(first, second)))
                : Optional.empty();
    }

    /** Not if they share no more than a corner: there an end goes a little too far, of which near misses tell. */
    private static Optional<Crossing> sideBySide(Line first, Line second) {
        boolean inEachOther = first.vector().isParallel(second.vector())
                && areWithin(deepest(first, second) - Line.JOINED, first, second)
                && first.shares(Math.max(first.thickness(), second.thickness()), second);
        return inEachOther
                ? Optional.of(crossing(Kind.SIDE_BY_SIDE, first, second, beginning(first, second)))
                : Optional.empty();
    }

    /** @return how far apart the centre lines are if the walls just touch */
    private static long deepest(Line first, Line second) {
        return (first.thickness() + second.thickness()) / 2;
    }

    private static boolean areWithin(long reach, Line first, Line second) {
        return first.isWithin(reach, second.from()) && first.isWithin(reach, second.to())
                || second.isWithin(reach, first.from()) && second.isWithin(reach, first.to());
    }

    /** @return whether an end of {@code other} lies between those of {@code line} and is not joined to one */
    private static boolean endsInside(Line line, Line other) {
        return Stream.of(other.from(), other.to()).anyMatch(end -> line.isBeside(end) && !isAtEnd(line, end));
    }

    private static boolean isAtEnd(Line line, Point point) {
        return point.isWithin(Line.JOINED, line.from()) || point.isWithin(Line.JOINED, line.to());
    }

    private static boolean areSame(Line first, Line second) {
        return isAtEnd(first, second.from()) && isAtEnd(first, second.to());
    }

    private static Point beginning(Line first, Line second) {
        if (second.isBeside(first.from()) || isAtEnd(second, first.from())) {
            return first.from();
        }
        boolean sameWay = first.vector().dot(second.vector()).signum() > 0;
        return sameWay ? second.from() : second.to();
    }

    private static Crossing crossing(Kind kind, Line first, Line second, Point at) {
        return new Crossing(kind, first.mark(), second.mark(), Length.ofUnits(at.x()), Length.ofUnits(at.y()));
    }
}
