package org.coursewright.benchmarks.walls;

import java.util.Random;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallEnd;

/**
 * Walls so small that a general-purpose solver can prove most of them, of every kind in turn: plain, with an opening and
 * its lintel, gabled, with a bond beam, two that meet at a corner, two that meet at a bonded tee.
 */
public final class SmallWalls {

    /** Kinds of small building, one after the other. */
    public enum Kind {
        /** One wall without openings, its ends free or tied. */
        PLAIN,
        /** One wall with an opening and, mostly, a lintel over it. */
        OPENING,
        /** One wall whose upper courses are raked. */
        GABLE,
        /** One wall with a bond beam along part of it. */
        BEAM,
        /** Two walls that meet at a corner. */
        CORNER,
        /** A wall bonded into the side of another. */
        TEE
    }

    private final Random random;
    private final BuildingDraft building = new BuildingDraft();

    private final int times;

    private SmallWalls(long seed, int times) {
        this.random = new Random(seed);
        this.times = times;
    }

    /** @return the kind of building number {@code index} */
    public static Kind kind(int index) {
        return Kind.values()[index % Kind.values().length];
    }

    /**
     * Draws a building of one or two walls.
     *
     * @param index which of the seed's buildings, from 0
     * @return the same building for the same seed and index
     */
    public static BondRequest of(long seed, int index) {
        return of(seed, index, 1);
    }

    /**
     * The same with walls so many times as long and as many more courses, rounded down.
     *
     * @param times at least 1
     * @return the same building for the same seed, index and size
     */
    public static BondRequest of(long seed, int index, int times) {
        SmallWalls small = new SmallWalls(seed * 1_000_003 + index, times);
        small.draw(kind(index));
        return small.building.request();
    }

    private void draw(Kind kind) {
        UnitType unit = UnitType.HOSTILE.get(random.nextInt(UnitType.HOSTILE.size()));
        WallDraft wall = wall("A", unit);
        switch (kind) {
            case PLAIN -> endSomehow(wall);
            case OPENING -> pierce(wall);
            case GABLE -> wall.gable(wall.courseCount / 2, between(8, 40));
            case BEAM -> wall.obstruct(Obstacle.Kind.BEAM, between(0, wall.length / 2), wall.length,
                    wall.courseCount - 1, wall.courseCount - 1);
            case CORNER -> building.corner(wall, wall("B", unit));
            case TEE -> building.tee(wall("B", unit), wall, between(16, wall.length - 72));
        }
    }

    private WallDraft wall(String mark, UnitType unit) {
        WallDraft wall = new WallDraft(mark, unit,
                times * (unit.face() * between(4, 14) / 4) + between(0, 7) + 80, times + between(2, 4));
        building.add(wall);
        return wall;
    }

    private int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    private void endSomehow(WallDraft wall) {
        wall.levelOfFirst(between(1, 2));
        if (random.nextBoolean()) {
            wall.start(new WallEnd.Tied());
        }
        if (random.nextBoolean()) {
            wall.end(new WallEnd.Tied());
        }
    }

    private void pierce(WallDraft wall) {
        int width = between(40, wall.length / 2);
        int from = between(24, wall.length - width - 24);
        int head = between(1, wall.courseCount - 1);
        wall.obstruct(Obstacle.Kind.OPENING, from, from + width, between(1, head), head);
        if (random.nextInt(4) > 0) {
            wall.obstruct(Obstacle.Kind.LINTEL, Math.max(0, from - 24), Math.min(wall.length, from + width + 24),
                    head + 1, head + 1);
        }
    }
}
