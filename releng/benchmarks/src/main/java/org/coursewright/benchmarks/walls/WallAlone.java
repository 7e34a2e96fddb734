package org.coursewright.benchmarks.walls;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;

/**
 * A request for one wall of a building, handed as decided. A request has to hold every wall that a meeting names, so the
 * walls met are in it too, one course high and without openings.
 */
final class WallAlone {

    private final BondRequest building;
    private final Map<String, String> throughOnOdd;
    private final WallFace wall;
    private final Set<String> meetings = new HashSet<>();

    WallAlone(BondRequest building, Map<String, String> throughOnOdd, WallFace wall) {
        this.building = building;
        this.throughOnOdd = throughOnOdd;
        this.wall = wall;
        wall.obstacles().forEach(obstacle -> obstacle.meeting().ifPresent(meetings::add));
        meeting(wall.start()).ifPresent(meetings::add);
        meeting(wall.end()).ifPresent(meetings::add);
    }

    BondRequest request() {
        List<Meeting> decided = building.meetings().stream().filter(meeting -> meetings.contains(meeting.id()))
                .map(meeting -> new Meeting(meeting.id(), meeting.kind(), meeting.walls(),
                        Optional.of(throughOnOdd.get(meeting.id()))))
                .toList();
        List<WallFace> walls = new ArrayList<>(List.of(wall));
        building.walls().stream().filter(other -> !other.mark().equals(wall.mark()))
                .filter(other -> decided.stream().anyMatch(meeting -> meeting.walls().contains(other.mark())))
                .map(this::stump).forEach(walls::add);
        return new BondRequest(walls, decided);
    }

    private WallFace stump(WallFace other) {
        List<Obstacle> tees = other.obstacles().stream()
                .filter(obstacle -> obstacle.meeting().filter(meetings::contains).isPresent())
                .map(tee -> new Obstacle(tee.kind(), tee.mark(), tee.from(), tee.to(), 1, 1, tee.meeting())).toList();
        return new WallFace(other.mark(), other.length(), other.stock(), other.rule(), other.courses().subList(0, 1),
                kept(other.start()), kept(other.end()), tees);
    }

    private WallEnd kept(WallEnd end) {
        return meeting(end).filter(id -> !meetings.contains(id)).isPresent() ? new WallEnd.Free() : end;
    }

    private static Optional<String> meeting(WallEnd end) {
        if (end instanceof WallEnd.Corner corner) {
            return Optional.of(corner.meeting());
        }
        return end instanceof WallEnd.Bonded bonded ? Optional.of(bonded.meeting()) : Optional.empty();
    }
}
