package org.coursewright.benchmarks.walls;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.Dimension;
import org.coursewright.measure.Length;

/** What may change in a building: every opening may move, every wall that ends in the open may be longer or shorter. */
public final class Adjustables {

    private static final Length TOLERANCE = UnitType.quarters(28);

    private Adjustables() {
    }

    /** @return them all, within 7 in either way */
    public static List<Adjustable> of(BondRequest building) {
        List<Adjustable> adjustables = new ArrayList<>();
        for (WallFace wall : building.walls()) {
            wall.obstacles().stream().filter(obstacle -> obstacle.kind() == Obstacle.Kind.OPENING)
                    .map(opening -> Adjustable.within(wall.mark(), Optional.of(opening.mark()), Dimension.OFFSET,
                            TOLERANCE))
                    .forEach(adjustables::add);
            if (wall.start() instanceof WallEnd.Free || wall.end() instanceof WallEnd.Free) {
                adjustables.add(Adjustable.within(wall.mark(), Optional.empty(), Dimension.LENGTH, TOLERANCE));
            }
        }
        return adjustables;
    }
}
