package org.coursewright.layout.ui.plan.change;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;

/**
 * Brings walls, or openings, into line with one of them.
 *
 * @param storey as it is before
 * @param side by which they are aligned
 */
public record Alignment(StoreyShape storey, Side side) {

    /** By what things are aligned; lower is left where walls run north, right of it is upper. */
    public enum Side {
        /** West or south face, west or south jamb. */
        LOWER(-1),
        /** Centre line, middle of the opening. */
        CENTRE(0),
        /** East or north face, east or north jamb. */
        UPPER(1);

        private final int sign;

        Side(int sign) {
            this.sign = sign;
        }

        private Length share(Length half) {
            return half.times(sign);
        }
    }

    /**
     * @param model wall that stays
     * @param others walls that are to be in line with it; those that are not parallel stay too
     * @return where the ends of walls are then
     */
    public WallEnds walls(WallShape model, List<WallShape> others) {
        Stretching stretching = new Stretching(storey);
        WallEnds ends = new WallEnds(storey);
        Heading across = upward(model.heading().left());
        for (WallShape other : others) {
            if (other.heading().isParallel(model.heading())) {
                Length by = across.along(other.middle().to(model.middle())).plus(side.share(model.module().half()))
                        .minus(side.share(other.module().half()));
                ends = stretching.move(Stretching.ends(other), across.ahead(by), across);
            }
        }
        return ends;
    }

    /**
     * @param model opening that stays
     * @param wall that it is in
     * @param others openings that are to be opposite to it, with their walls; those in walls that are not parallel stay
     * @return the offsets of those that move
     */
    public Map<Opening, Length> openings(Opening model, WallShape wall, Map<Opening, WallShape> others) {
        Map<Opening, Length> offsets = new LinkedHashMap<>();
        PlanPoint at = at(wall, model.getOffset(), model.getWidth());
        others.forEach((opening, other) -> {
            if (other.heading().isParallel(wall.heading())) {
                Length now = other.offset(at(other, opening.getOffset(), opening.getWidth()));
                offsets.put(opening, opening.getOffset().plus(other.offset(at).minus(now)));
            }
        });
        return offsets;
    }

    private PlanPoint at(WallShape wall, Length offset, Length width) {
        Length half = Length.ofUnits(width.units() / 2);
        boolean along = upward(wall.heading()).equals(wall.heading());
        Length share = side.share(half);
        return wall.at(offset.plus(half).plus(along ? share : share.negated()), Length.ZERO);
    }

    /** The same line, towards the east or, if square to that, the north. */
    private static Heading upward(Heading heading) {
        boolean down = heading.east() < 0 || heading.east() == 0 && heading.north() < 0;
        return down ? heading.reversed() : heading;
    }
}
