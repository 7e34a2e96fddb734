package org.coursewright.benchmarks.walls;

import static org.coursewright.benchmarks.walls.UnitType.quarters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Length;

/** A building as it has to be laid again when one of its openings is moved a little. */
public final class MovedOpenings {

    private static final int MOST_UNITS = 800;
    /** Moves of one opening. */
    public static final int STEPS = 8;

    private MovedOpenings() {
    }

    /**
     * Moves the first opening of every wall of at most 800 units, with its lintel, by 1/4 to 2 in.
     *
     * @param result the building's layout
     * @return for every move the building, {@value #STEPS} for an opening
     */
    public static List<BondRequest> of(BondRequest building, BondResult result) {
        List<BondRequest> moves = new ArrayList<>();
        for (int index = 0; index < building.walls().size(); index++) {
            WallFace wall = building.walls().get(index);
            if (units(result.walls().get(index)) <= MOST_UNITS && opening(wall).isPresent()) {
                for (int step = 1; step <= STEPS; step++) {
                    moves.add(with(building, index, moved(wall, quarters(step))));
                }
            }
        }
        return moves;
    }

    /** @return the building with the first opening of every wall, and its lintel, an inch further on */
    public static BondRequest off(BondRequest building) {
        return new BondRequest(building.walls().stream().map(
                wall -> opening(wall).isPresent() ? moved(wall, quarters(4)) : wall).toList(), building.meetings());
    }

    private static BondRequest with(BondRequest building, int index, WallFace wall) {
        List<WallFace> walls = new ArrayList<>(building.walls());
        walls.set(index, wall);
        return new BondRequest(walls, building.meetings());
    }

    private static int units(WallLayout wall) {
        return wall.courses().stream().flatMap(course -> course.runs().stream()).mapToInt(run -> run.pieces().size())
                .sum();
    }

    private static Optional<Obstacle> opening(WallFace wall) {
        return wall.obstacles().stream().filter(obstacle -> obstacle.kind() == Obstacle.Kind.OPENING).findFirst();
    }

    private static WallFace moved(WallFace wall, Length by) {
        int first = wall.obstacles().indexOf(opening(wall).orElseThrow());
        List<Obstacle> obstacles = new ArrayList<>(wall.obstacles());
        obstacles.set(first, moved(obstacles.get(first), by));
        if (first + 1 < obstacles.size() && obstacles.get(first + 1).kind() == Obstacle.Kind.LINTEL) {
            obstacles.set(first + 1, moved(obstacles.get(first + 1), by));
        }
        return new WallFace(wall.mark(), wall.length(), wall.stock(), wall.rule(), wall.courses(), wall.start(),
                wall.end(), obstacles);
    }

    private static Obstacle moved(Obstacle obstacle, Length by) {
        return new Obstacle(obstacle.kind(), obstacle.mark(), obstacle.from().plus(by), obstacle.to().plus(by),
                obstacle.firstCourse(), obstacle.lastCourse(), obstacle.meeting());
    }
}
