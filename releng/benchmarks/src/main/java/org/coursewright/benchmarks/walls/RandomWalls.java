package org.coursewright.benchmarks.walls;

import java.util.Random;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallEnd;

/**
 * Deliberately hostile walls: 8 to 80 ft long, 8 to 30 courses, up to five openings with lintels and bearings placed to
 * the quarter inch without a thought for the module, free and tied ends, corners and bonded tees.
 */
public final class RandomWalls {

    private static final int FOOT = 48;
    private static final int LEAST_PIER = 64;

    private final Random random;
    private final BuildingDraft building = new BuildingDraft();

    private RandomWalls(long seed) {
        this.random = new Random(seed);
    }

    /**
     * Draws a building.
     *
     * @param count how many walls, at least 1
     * @return the same walls for the same seed and count
     */
    public static BondRequest of(long seed, int count) {
        RandomWalls walls = new RandomWalls(seed);
        WallDraft previous = walls.wall(1);
        for (int number = 2; number <= count; number++) {
            WallDraft next = walls.wall(number);
            walls.join(previous, next);
            previous = next;
        }
        return walls.building.request();
    }

    private WallDraft wall(int number) {
        UnitType unit = UnitType.HOSTILE.get(random.nextInt(UnitType.HOSTILE.size()));
        WallDraft wall = new WallDraft("W" + number, unit, ratio(8 * FOOT, 80 * FOOT), ratio(8, 30));
        wall.levelOfFirst(between(1, 2));
        pierce(wall, random.nextInt(6));
        building.add(wall);
        return wall;
    }

    private int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    /** As many between 8 and 16 as between 40 and 80: buildings have more short walls than long ones. */
    private int ratio(int least, int most) {
        return (int) Math.round(least * Math.pow((double) most / least, random.nextDouble()));
    }

    /** Each opening somewhere in its own share of the wall, piers left between. */
    private void pierce(WallDraft wall, int openings) {
        int share = openings == 0 ? 0 : (wall.length - LEAST_PIER) / openings;
        for (int opening = 0; opening < openings && share >= 2 * LEAST_PIER; opening++) {
            int width = between(LEAST_PIER, Math.min(share - LEAST_PIER, 6 * FOOT));
            int from = LEAST_PIER + opening * share + random.nextInt(share - LEAST_PIER - width + 1);
            int sill = random.nextBoolean() ? 1 : between(2, wall.courseCount / 2);
            int head = Math.min(wall.courseCount, sill + between(2, 14));
            wall.obstruct(Obstacle.Kind.OPENING, from, from + width, sill, head);
            if (head < wall.courseCount) {
                int bearing = between(24, 40);
                wall.obstruct(Obstacle.Kind.LINTEL, from - bearing, from + width + bearing, head + 1, head + 1);
            }
        }
    }

    private void join(WallDraft previous, WallDraft next) {
        switch (random.nextInt(4)) {
            case 0 -> next.start(new WallEnd.Free());
            case 1 -> next.start(new WallEnd.Tied());
            case 2 -> building.corner(previous, next);
            default -> building.tee(next, previous, between(LEAST_PIER, previous.length - 2 * LEAST_PIER));
        }
    }
}
