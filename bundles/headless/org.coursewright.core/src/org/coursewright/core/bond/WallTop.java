package org.coursewright.core.bond;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.coursewright.measure.Length;
import org.coursewright.model.building.TopPoint;
import org.coursewright.model.building.Wall;

/**
 * The top of a wall: level, or a gable or rake given by points. At every height it tells from where to where there is
 * masonry, rounded towards the masonry to 1/320 mm.
 *
 * @param length of the wall from outer face to outer face
 * @param points of the top from start to end, at least two
 */
record WallTop(Length length, List<Point> points) {

    /** A point of the top: how far along the wall, how high above the base. */
    record Point(Length offset, Length height) {
    }

    /** From where to where there is masonry. */
    record Extent(Length from, Length to) {
    }

    static WallTop of(Wall wall, Length length) {
        if (wall.getTopProfile().isEmpty()) {
            return new WallTop(length,
                    List.of(new Point(Length.ZERO, wall.getHeight()), new Point(length, wall.getHeight())));
        }
        List<Point> given = wall.getTopProfile().stream().map(WallTop::point)
                .sorted(Comparator.comparing(Point::offset)).toList();
        Point first = given.get(0);
        Point last = given.get(given.size() - 1);
        return new WallTop(length,
                Stream
                        .of(List.of(new Point(Length.ZERO, first.height())), given,
                                List.of(new Point(length, last.height())))
                        .flatMap(List::stream).distinct().toList());
    }

    private static Point point(TopPoint point) {
        return new Point(point.getOffset(), point.getHeight());
    }

    /** @return the highest point above the base */
    Length highest() {
        return points.stream().map(Point::height).max(Comparator.naturalOrder()).orElse(Length.ZERO);
    }

    /** @return the height that the top nowhere falls below between two places, rounded down */
    Length lowestBetween(Length from, Length to) {
        Stream<Length> between = points.stream().filter(point -> point.offset().isGreaterThan(from))
                .filter(point -> point.offset().isLessThan(to)).map(Point::height);
        return Stream.concat(between, Stream.of(from, to).flatMap(this::heightsAt)).min(Comparator.naturalOrder())
                .orElse(Length.ZERO);
    }

    /** Two heights where the top has a step. */
    private Stream<Length> heightsAt(Length offset) {
        return IntStream.range(1, points.size()).mapToObj(i -> List.of(points.get(i - 1), points.get(i)))
                .filter(pair -> !offset.isLessThan(pair.get(0).offset()))
                .filter(pair -> !offset.isGreaterThan(pair.get(1).offset()))
                .map(pair -> heightAt(offset, pair.get(0), pair.get(1)));
    }

    private static Length heightAt(Length offset, Point before, Point after) {
        long run = after.offset().minus(before.offset()).units();
        if (run == 0) {
            return before.height().isLessThan(after.height()) ? before.height() : after.height();
        }
        long rise = after.height().minus(before.height()).units();
        long part = Math.multiplyExact(rise, offset.minus(before.offset()).units());
        return before.height().plus(Length.ofUnits(Math.floorDiv(part, run)));
    }

    /** @return whether the top rises to one peak and falls again, without a dip, so that every course is in one piece */
    boolean hasOnePeak() {
        boolean falling = false;
        for (int i = 1; i < points.size(); i++) {
            int step = points.get(i).height().compareTo(points.get(i - 1).height());
            if (step > 0 && falling) {
                return false;
            }
            falling |= step < 0;
        }
        return true;
    }

    /** @return from where to where the wall is at least {@code height} high, or empty if it is nowhere */
    Optional<Extent> at(Length height) {
        Optional<Length> from = leftmost(height);
        Optional<Length> to = rightmost(height);
        return from.isPresent() && to.isPresent() && !to.get().isLessThan(from.get())
                ? Optional.of(new Extent(from.get(), to.get()))
                : Optional.empty();
    }

    private Optional<Length> leftmost(Length height) {
        for (int i = 0; i < points.size(); i++) {
            if (!points.get(i).height().isLessThan(height)) {
                return Optional
                        .of(i == 0 ? points.get(0).offset() : crossing(points.get(i - 1), points.get(i), height));
            }
        }
        return Optional.empty();
    }

    private Optional<Length> rightmost(Length height) {
        for (int i = points.size() - 1; i >= 0; i--) {
            if (!points.get(i).height().isLessThan(height)) {
                return Optional.of(i == points.size() - 1
                        ? points.get(i).offset()
                        : crossing(points.get(i + 1), points.get(i), height));
            }
        }
        return Optional.empty();
    }

    /** Where the line from a point below the height to one at or above it reaches it, rounded towards the latter. */
    private static Length crossing(Point below, Point above, Length height) {
        long rise = above.height().minus(below.height()).units();
        long run = above.offset().minus(below.offset()).units();
        long part = Math.multiplyExact(height.minus(below.height()).units(), run);
        long along = run >= 0 ? -Math.floorDiv(-part, rise) : Math.floorDiv(part, rise);
        return below.offset().plus(Length.ofUnits(along));
    }
}
