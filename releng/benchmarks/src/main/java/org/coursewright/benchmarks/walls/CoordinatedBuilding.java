package org.coursewright.benchmarks.walls;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Obstacle;

/**
 * Sixty walls that somebody has planned on the module: fifteen rooms of four walls, units of 14 by 10 in laid in
 * stretcher bond, closers of 10 in in stock.
 *
 * <p>With a module of 14 1/2 in, n modules and 10 in is the length of a wall that closes at both corners without a cut
 * (n whole units and n - 1 joints where it runs through at one end, and the corner unit's width at the other). A jamb
 * stands as far from the wall's end; an opening is therefore a number of modules less 10 in wide.
 *
 * <p>A lintel bears 10 in on the side where the wall runs through in its course and 14 in on the other. So there is one
 * handing, every wall through at its start in odd courses, with which the whole building closes without a cut and
 * without a short lap; with any other it does not.
 */
public final class CoordinatedBuilding {

    private static final int MODULE = 58;
    private static final int CLOSER = 40;
    private static final int UNIT = 56;
    private static final int ROOMS = 15;

    private final Random random = new Random(60);
    private final BuildingDraft building = new BuildingDraft();

    private CoordinatedBuilding() {
    }

    /** @return always the same sixty walls */
    public static BondRequest request() {
        CoordinatedBuilding coordinated = new CoordinatedBuilding();
        for (int room = 1; room <= ROOMS; room++) {
            coordinated.room(room);
        }
        return coordinated.building.request();
    }

    private void room(int number) {
        int courses = 24 + random.nextInt(5);
        int[] modules = {8 + random.nextInt(20), 8 + random.nextInt(12)};
        List<WallDraft> walls = new ArrayList<>();
        for (int side = 0; side < 4; side++) {
            WallDraft wall = new WallDraft("R%02d-%d".formatted(number, side + 1), UnitType.CLOSERS_14,
                    modules[side % 2] * MODULE + CLOSER, courses);
            pierce(wall, modules[side % 2]);
            building.add(wall);
            walls.add(wall);
        }
        for (int side = 0; side < 4; side++) {
            building.corner(walls.get(side), walls.get((side + 1) % 4));
        }
    }

    /** None, one or two openings, three modules of masonry before, between and after them at least. */
    private void pierce(WallDraft wall, int modules) {
        int openings = Math.min(random.nextInt(3), (modules - 3) / 6);
        for (int opening = 0; opening < openings; opening++) {
            int before = 3 + opening * 6;
            int width = 2 + random.nextInt(2);
            int from = before * MODULE + CLOSER;
            int to = from + width * MODULE - CLOSER;
            int sill = random.nextBoolean() ? 1 : 7;
            wall.obstruct(Obstacle.Kind.OPENING, from, to, sill, 18);
            wall.obstruct(Obstacle.Kind.LINTEL, from - CLOSER, to + UNIT, 19, 19);
        }
    }
}
