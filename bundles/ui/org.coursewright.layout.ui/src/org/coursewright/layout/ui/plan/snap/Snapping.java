package org.coursewright.layout.ui.plan.snap;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.core.geometry.Place;
import org.coursewright.diagram.ui.scale.LengthStep;
import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.PlanLine;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.PlanVector;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.layout.ui.plan.shape.WallModule;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.layout.ui.plan.snap.SnapMark.Kind;
import org.coursewright.measure.Length;

/**
 * Draws points to what is near. The end of a wall comes first, then a place on a wall, then round angles and the lines of
 * other walls, and last the module.
 *
 * @param walls that are drawn to
 * @param reach how near something must be
 * @param module that is stepped by
 * @param fine step that holds instead of the module if somebody wants to be free, empty if not
 */
public record Snapping(List<WallShape> walls, Length reach, WallModule module, Optional<LengthStep> fine) {

    private static final double ROUND = 45;
    private static final double NEAR_DEGREES = 7;

    /**
     * @param storey with all walls
     * @param moving walls that are on their way and do not count
     * @param reach how near something must be
     * @param module that is stepped by
     * @param fine step instead of the module, empty for the module
     * @return what draws points there
     */
    public static Snapping in(StoreyShape storey, Collection<WallShape> moving, Length reach, WallModule module,
            Optional<LengthStep> fine) {
        return new Snapping(storey.walls().values().stream().filter(wall -> !moving.contains(wall)).toList(), reach,
                module, fine);
    }

    /**
     * @param raw where the mouse is
     * @return where a wall is to begin
     */
    public Snapped point(PlanPoint raw) {
        return end(raw).or(() -> onWall(raw)).orElseGet(() -> {
            List<SnapMark> marks = new ArrayList<>();
            Optional<PlanPoint> easting = nearest(raw, PlanPoint::x);
            Optional<PlanPoint> northing = nearest(raw, PlanPoint::y);
            PlanPoint point = new PlanPoint(easting.map(PlanPoint::x).orElseGet(() -> step(raw.x())),
                    northing.map(PlanPoint::y).orElseGet(() -> step(raw.y())));
            easting.ifPresent(end -> marks.add(new SnapMark(Kind.IN_LINE, end, point)));
            northing.ifPresent(end -> marks.add(new SnapMark(Kind.IN_LINE, end, point)));
            return new Snapped(point, marks.isEmpty() ? List.of(SnapMark.at(Kind.MODULE, point)) : marks);
        });
    }

    /**
     * @param from where a wall begins
     * @param raw where the mouse is
     * @param more how much longer the wall is from face to face than from end to end
     * @return where it is to end
     */
    public Snapped from(PlanPoint from, PlanPoint raw, Length more) {
        PlanVector way = from.to(raw);
        if (way.isNone()) {
            return new Snapped(raw, List.of());
        }
        Optional<Snapped> end = end(raw);
        if (end.isPresent()) {
            return end.get();
        }
        double degrees = Heading.of(way).degrees();
        double round = Math.rint(degrees / ROUND) * ROUND;
        boolean isRound = Math.abs(degrees - round) <= NEAR_DEGREES;
        Heading heading = isRound ? Heading.ofDegrees(round) : Heading.of(way);
        Snapped found = along(from, heading, heading.along(way), more);
        if (!isRound) {
            return found;
        }
        List<SnapMark> marks = new ArrayList<>(found.marks());
        marks.add(new SnapMark(Kind.ANGLE, from, found.point()));
        return new Snapped(found.point(), marks);
    }

    private Snapped along(PlanPoint from, Heading heading, Length distance, Length more) {
        PlanPoint raw = from.plus(heading.ahead(distance));
        PlanLine ray = new PlanLine(from, heading);
        Optional<PlanPoint> crossing = walls.stream()
                .flatMap(wall -> ray.crossing(wall.line()).filter(point -> isOn(wall, point)).stream())
                .filter(point -> isNear(point, raw)).min(Comparator.comparing(raw::distance));
        if (crossing.isPresent()) {
            return new Snapped(crossing.get(), List.of(SnapMark.at(Kind.ON_WALL, crossing.get())));
        }
        Optional<SnapMark> level = ends().map(end -> new SnapMark(Kind.IN_LINE, end, ray.foot(end)))
                .filter(mark -> isNear(mark.to(), raw) && !mark.to().equals(from))
                .min(Comparator.comparing(mark -> raw.distance(mark.to())));
        if (level.isPresent()) {
            return new Snapped(level.get().to(), List.of(level.get()));
        }
        Length outer = distance.plus(more);
        Length length = fine.map(step -> step.round(outer)).orElseGet(() -> module.outer(outer)).minus(more);
        PlanPoint point = from.plus(heading.ahead(length));
        return new Snapped(point, List.of(SnapMark.at(Kind.MODULE, point)));
    }

    /**
     * @param moved walls that are moved together
     * @param across direction in which they are moved
     * @param distance how far the mouse has moved in it
     * @return how far they are to be moved, as the middle of the first of them
     */
    public Snapped move(List<WallShape> moved, Heading across, Length distance) {
        WallShape first = moved.get(0);
        PlanPoint raw = first.middle().plus(across.ahead(distance));
        Optional<SnapMark> level = walls.stream().filter(wall -> wall.heading().isParallel(first.heading()))
                .filter(wall -> !wall.heading().isParallel(across))
                .map(wall -> new SnapMark(Kind.IN_LINE, wall.middle(), wall.line().foot(raw)))
                .filter(mark -> isNear(mark.to(), raw)).min(Comparator.comparing(mark -> raw.distance(mark.to())));
        if (level.isPresent()) {
            return new Snapped(level.get().to(), List.of(level.get()));
        }
        PlanPoint point = first.middle().plus(across.ahead(step(distance)));
        return new Snapped(point, List.of(SnapMark.at(Kind.MODULE, point)));
    }

    private Length step(Length length) {
        return fine.map(step -> step.round(length)).orElseGet(() -> module.round(length));
    }

    private Optional<Snapped> end(PlanPoint raw) {
        return ends().filter(end -> isNear(end, raw)).min(Comparator.comparing(raw::distance))
                .map(end -> new Snapped(end, List.of(SnapMark.at(Kind.END, end))));
    }

    private Optional<Snapped> onWall(PlanPoint raw) {
        return walls.stream().filter(wall -> !wall.distance(raw).isGreaterThan(reach))
                .min(Comparator.comparing(wall -> wall.distance(raw))).map(wall -> {
                    Length along = step(wall.heading().along(wall.from().to(raw)));
                    PlanPoint point = wall.from().plus(wall.heading().ahead(along));
                    PlanPoint on = isOn(wall, point) ? point : wall.line().foot(raw);
                    return new Snapped(on, List.of(SnapMark.at(Kind.ON_WALL, on)));
                });
    }

    private Optional<PlanPoint> nearest(PlanPoint raw, java.util.function.Function<PlanPoint, Length> coordinate) {
        return ends().filter(end -> !distance(coordinate, raw, end).isGreaterThan(reach))
                .min(Comparator.comparing(end -> distance(coordinate, raw, end)));
    }

    private static Length distance(java.util.function.Function<PlanPoint, Length> coordinate, PlanPoint one,
            PlanPoint other) {
        return coordinate.apply(one).minus(coordinate.apply(other)).abs();
    }

    private boolean isNear(PlanPoint one, PlanPoint other) {
        return !one.distance(other).isGreaterThan(reach);
    }

    private static boolean isOn(WallShape wall, PlanPoint point) {
        Length along = wall.heading().along(wall.from().to(point));
        return along.signum() >= 0 && !along.isGreaterThan(wall.from().distance(wall.to()));
    }

    private Stream<PlanPoint> ends() {
        return walls.stream().flatMap(wall -> Stream.of(wall.end(Place.START), wall.end(Place.END))).distinct();
    }
}
