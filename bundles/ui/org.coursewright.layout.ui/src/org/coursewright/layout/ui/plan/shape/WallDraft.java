package org.coursewright.layout.ui.plan.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.coursewright.core.geometry.CentreLine;
import org.coursewright.core.geometry.Place;
import org.coursewright.core.geometry.WallFaces;
import org.coursewright.model.building.Wall;

/** A wall while it is found out what it meets. */
final class WallDraft {

    private final Wall wall;
    private final WallModule module;
    private final PlanPoint from;
    private final PlanPoint to;
    private final List<Gap> gaps = new ArrayList<>();
    private EndCut start;
    private EndCut end;

    private record Gap(boolean left, PlanEdge edge) {
    }

    WallDraft(Wall wall, WallModule module) {
        this.wall = wall;
        this.module = module;
        this.from = new PlanPoint(wall.getFromX(), wall.getFromY());
        this.to = new PlanPoint(wall.getToX(), wall.getToY());
        cut(Place.START, arm(Place.START).square(true));
        cut(Place.END, arm(Place.END).square(true));
    }

    Wall wall() {
        return wall;
    }

    CentreLine centreLine(String name) {
        return new CentreLine(name, from.x(), from.y(), to.x(), to.y(), module.thickness());
    }

    /** The wall as it is seen from one of its ends. */
    PlanArm arm(Place place) {
        return place == Place.END
                ? new PlanArm(to, Heading.of(to.to(from)), module.thickness())
                : armAt(from);
    }

    /** The wall as it is seen from a point that it passes, towards its end. */
    PlanArm armAt(PlanPoint point) {
        return new PlanArm(point, Heading.of(from.to(to)), module.thickness());
    }

    /** Cuts an end; left and right as seen from there along the wall. */
    void cut(Place place, EndCut cut) {
        if (place == Place.START) {
            start = cut;
        } else {
            end = cut.turned();
        }
    }

    void interrupt(boolean left, PlanEdge edge) {
        gaps.add(new Gap(left, edge));
    }

    WallShape shape(WallFaces faces) {
        WallFace left = new WallFace(start.left(), end.left());
        WallFace right = new WallFace(end.right(), start.right());
        gaps.forEach(gap -> (gap.left() ? left : right).interrupt(gap.edge()));
        Stream<PlanEdge> ends = Stream.of(start, end).filter(EndCut::open)
                .map(cut -> new PlanEdge(cut.left(), cut.right()));
        return new WallShape(wall, from, to, module, faces,
                List.of(start.left(), end.left(), end.right(), start.right()),
                Stream.of(left.edges().stream(), right.edges().stream(), ends).flatMap(each -> each).toList());
    }
}
