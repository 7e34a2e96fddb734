package org.coursewright.bond.internal.handing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;

/**
 * A wall and the turns it takes, free of the names of walls and meetings: two walls of which this is equal are laid
 * alike.
 *
 * @param face the wall with its meetings named by their place in it
 * @param turns whether walls run through, at the start, the end and the tees in order
 */
public record HandedWall(WallFace face, List<Turn> turns) {

    /** In which courses a wall runs through at a meeting. */
    enum Turn {
        ODD, EVEN, NEVER
    }

    /** The wall with the turns that a handing gives it. */
    public static HandedWall of(WallFace wall, Handing handing) {
        List<Turn> turns = new ArrayList<>();
        WallEnd start = nameless(wall.start(), wall.mark(), handing, turns);
        WallEnd end = nameless(wall.end(), wall.mark(), handing, turns);
        List<Obstacle> obstacles = new ArrayList<>();
        for (Obstacle obstacle : wall.obstacles()) {
            obstacles.add(new Obstacle(obstacle.kind(), "", obstacle.from(), obstacle.to(),
                    obstacle.firstCourse(), obstacle.lastCourse(), obstacle.meeting().map(id -> "")));
            obstacle.meeting().ifPresent(
                    id -> turns.add(turn(handing.endingWallRunsThrough(id, true),
                            handing.endingWallRunsThrough(id, false))));
        }
        WallFace face = new WallFace("", wall.length(), wall.stock(), wall.rule(), wall.courses(), start, end,
                obstacles, wall.pins());
        return new HandedWall(face, turns);
    }

    /** The meetings at the wall's ends, each once, the start's first. */
    public static List<String> endMeetings(WallFace wall) {
        Set<String> meetings = new LinkedHashSet<>();
        meeting(wall.start()).ifPresent(meetings::add);
        meeting(wall.end()).ifPresent(meetings::add);
        return List.copyOf(meetings);
    }

    private static Optional<String> meeting(WallEnd end) {
        if (end instanceof WallEnd.Corner corner) {
            return Optional.of(corner.meeting());
        }
        return end instanceof WallEnd.Bonded bonded ? Optional.of(bonded.meeting()) : Optional.empty();
    }

    private static WallEnd nameless(WallEnd end, String mark, Handing handing, List<Turn> turns) {
        meeting(end).ifPresent(
                id -> turns.add(turn(handing.runsThrough(id, mark, true), handing.runsThrough(id, mark, false))));
        if (end instanceof WallEnd.Corner corner) {
            return new WallEnd.Corner("", corner.setback(), corner.beside());
        }
        return end instanceof WallEnd.Bonded bonded
                ? new WallEnd.Bonded("", bonded.reach(), bonded.beside())
                : end;
    }

    private static Turn turn(boolean odd, boolean even) {
        if (odd) {
            return Turn.ODD;
        }
        return even ? Turn.EVEN : Turn.NEVER;
    }
}
