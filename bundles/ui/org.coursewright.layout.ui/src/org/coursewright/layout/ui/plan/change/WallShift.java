package org.coursewright.layout.ui.plan.change;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.core.geometry.Place;
import org.coursewright.core.geometry.WallMeeting.Kind;
import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.PlanMeeting.End;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.PlanVector;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.layout.ui.plan.snap.SnapMark;
import org.coursewright.layout.ui.plan.snap.Snapped;
import org.coursewright.layout.ui.plan.snap.Snapping;
import org.coursewright.measure.Length;

/**
 * Where walls go when they are dragged. Walls that are in line with each other and meet others are moved sideways only, as
 * nothing is gained by moving them along.
 *
 * @param storey as it is before
 */
public record WallShift(StoreyShape storey) {

    /**
     * What a drag comes to.
     *
     * @param ends where the ends of walls are
     * @param by how far the walls that are dragged have moved
     * @param marks of what they were drawn to
     */
    public record Outcome(WallEnds ends, PlanVector by, List<SnapMark> marks) {

        public Outcome {
            marks = List.copyOf(marks);
        }
    }

    /**
     * @param walls that are dragged, at least one
     * @param raw how far the mouse has moved
     * @param snapping what they are drawn to
     * @return where walls are then
     */
    public Outcome move(List<WallShape> walls, PlanVector raw, Snapping snapping) {
        Heading along = walls.get(0).heading();
        Snapped across = snapping.move(walls, along.left(), along.across(raw));
        PlanVector by = walls.get(0).middle().to(across.point());
        List<SnapMark> marks = new ArrayList<>(across.marks());
        if (!isSideways(walls)) {
            Snapped ahead = snapping.move(walls, along, along.along(raw));
            by = by.plus(walls.get(0).middle().to(ahead.point()));
            marks.addAll(ahead.marks());
        }
        return new Outcome(shift(walls, by), by, marks);
    }

    /**
     * @param walls that are moved, at least one
     * @param by how far exactly
     * @return where the ends of walls are then
     */
    public WallEnds shift(List<WallShape> walls, PlanVector by) {
        List<End> seeds = walls.stream().flatMap(wall -> Stretching.ends(wall).stream()).toList();
        return new Stretching(storey).move(seeds, by, walls.get(0).heading());
    }

    private boolean isSideways(List<WallShape> walls) {
        Heading along = walls.get(0).heading();
        return walls.stream().allMatch(wall -> wall.heading().isParallel(along))
                && walls.stream().anyMatch(wall -> !isFree(wall, Place.START) || !isFree(wall, Place.END));
    }

    /**
     * @param wall of the storey
     * @param place its start or its end
     * @return whether that end meets nothing
     */
    public boolean isFree(WallShape wall, Place place) {
        End end = new End(wall.wall(), place);
        return storey.meetings().stream()
                .anyMatch(meeting -> meeting.kind() == Kind.FREE && meeting.ends().contains(end));
    }

    /**
     * @param wall one of whose ends is dragged
     * @param place which end
     * @param raw how far the mouse has moved
     * @param alone whether only this end moves, whatever it meets; an end that meets nothing always does
     * @param snapping what it is drawn to
     * @return where walls are then
     */
    public Outcome moveEnd(WallShape wall, Place place, PlanVector raw, boolean alone, Snapping snapping) {
        PlanPoint start = wall.end(place);
        PlanPoint other = wall.end(place == Place.START ? Place.END : Place.START);
        Length more = wall.length().minus(wall.from().distance(wall.to()));
        Snapped snapped = snapping.from(other, start.plus(raw), more);
        PlanVector by = start.to(snapped.point());
        return new Outcome(end(wall, place, by, alone || isFree(wall, place)), by, snapped.marks());
    }

    private WallEnds end(WallShape wall, Place place, PlanVector by, boolean alone) {
        if (!alone) {
            return new Stretching(storey).move(List.of(new End(wall.wall(), place)), by, wall.heading());
        }
        WallEnds ends = new WallEnds(storey);
        ends.move(wall.wall(), place, by);
        return ends;
    }
}
