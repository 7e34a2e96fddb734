package org.coursewright.layout.ui.plan.change;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.geometry.Place;
import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.PlanMeeting;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.PlanVector;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.WallPosition;

/** Where the ends of walls are moved to. */
public final class WallEnds {

    private final StoreyShape storey;
    private final Map<PlanMeeting.End, PlanVector> moves = new LinkedHashMap<>();

    /** @param storey that the walls are in, as it is before */
    public WallEnds(StoreyShape storey) {
        this.storey = storey;
    }

    /**
     * Moves one end and nothing else.
     *
     * @param wall of the storey
     * @param place its start or its end
     * @param by how far, in addition to what it was moved before
     */
    public void move(Wall wall, Place place, PlanVector by) {
        moves.merge(new PlanMeeting.End(wall, place), by, PlanVector::plus);
    }

    void moveAll(Iterable<PlanMeeting.End> ends, PlanVector by) {
        ends.forEach(end -> move(end.wall(), end.place(), by));
    }

    /**
     * @param wall of the storey
     * @param place its start or its end
     * @return where that end is then
     */
    public PlanPoint end(WallShape wall, Place place) {
        return wall.end(place).plus(moves.getOrDefault(new PlanMeeting.End(wall.wall(), place), PlanVector.NONE));
    }

    /** @return the walls that are changed, in the order in which they were moved first */
    public List<WallShape> changed() {
        return moves.entrySet().stream().filter(each -> !each.getValue().isNone()).map(each -> each.getKey().wall())
                .distinct().map(storey::wall).flatMap(Optional::stream).toList();
    }

    /** @return where the changed walls are to lie; their openings stay where they are unless the wall moves as a whole */
    public List<WallPosition> positions() {
        return changed().stream().map(this::position).toList();
    }

    private WallPosition position(WallShape wall) {
        PlanPoint from = end(wall, Place.START);
        PlanPoint to = end(wall, Place.END);
        return new WallPosition(wall.wall(), from.x(), from.y(), to.x(), to.y(), openingsBy(wall, from, to));
    }

    private static Length openingsBy(WallShape wall, PlanPoint from, PlanPoint to) {
        Heading heading = wall.heading();
        PlanVector start = wall.from().to(from);
        boolean whole = start.equals(wall.to().to(to));
        return whole ? Length.ZERO : heading.along(start).negated();
    }
}
