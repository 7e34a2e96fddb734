package org.coursewright.layout.ui.plan.change;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.coursewright.core.geometry.Place;
import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.PlanMeeting;
import org.coursewright.layout.ui.plan.shape.PlanMeeting.End;
import org.coursewright.layout.ui.plan.shape.PlanVector;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.layout.ui.plan.shape.WallShape;

/**
 * Moves ends of walls so that walls which meet keep meeting, and none turns: a wall in line with the way becomes longer or
 * shorter, any other goes along as a whole, and takes with it what ends at it.
 */
public final class Stretching {

    private final StoreyShape storey;
    private final WallEnds ends;

    /** @param storey as it is before */
    public Stretching(StoreyShape storey) {
        this.storey = storey;
        this.ends = new WallEnds(storey);
    }

    /**
     * Moves ends; a slanting way is gone in two parts, along and across a direction, so that corners stay square.
     *
     * @param seeds ends that move in any case
     * @param by how far
     * @param along a direction of walls
     * @return where ends are then
     */
    public WallEnds move(Collection<End> seeds, PlanVector by, Heading along) {
        go(seeds, along.ahead(along.along(by)), along);
        go(seeds, along.left().ahead(along.across(by)), along.left());
        return ends;
    }

    private void go(Collection<End> seeds, PlanVector by, Heading way) {
        if (by.isNone()) {
            return;
        }
        Set<End> moved = new LinkedHashSet<>();
        Deque<End> next = new ArrayDeque<>(seeds);
        while (!next.isEmpty()) {
            End end = next.remove();
            if (moved.add(end)) {
                next.addAll(metAt(end));
                storey.wall(end.wall()).filter(wall -> !wall.heading().isParallel(way))
                        .ifPresent(wall -> next.addAll(alongWith(wall)));
            }
        }
        ends.moveAll(moved, by);
    }

    /** The other ends at the point where this one is. */
    private List<End> metAt(End end) {
        return storey.meetings().stream().filter(meeting -> meeting.ends().contains(end))
                .flatMap(meeting -> meeting.ends().stream()).filter(End::isEnd).toList();
    }

    /** Both ends of a wall, and the ends of the walls that end against its side. */
    private List<End> alongWith(WallShape wall) {
        Set<End> found = new LinkedHashSet<>(ends(wall));
        End passing = new End(wall.wall(), Place.ALONG);
        storey.meetings().stream().filter(meeting -> meeting.ends().contains(passing)).map(PlanMeeting::ends)
                .forEach(met -> met.stream().filter(End::isEnd).forEach(found::add));
        return List.copyOf(found);
    }

    /**
     * @param wall of the storey
     * @return its two ends
     */
    public static List<End> ends(WallShape wall) {
        return List.of(new End(wall.wall(), Place.START), new End(wall.wall(), Place.END));
    }
}
