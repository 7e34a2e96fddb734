package org.coursewright.benchmarks.walls;

import static org.coursewright.benchmarks.walls.UnitType.quarters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallEnd;

/** A building in the making. */
final class BuildingDraft {

    private final List<WallDraft> walls = new ArrayList<>();
    private final List<Meeting> meetings = new ArrayList<>();

    void add(WallDraft wall) {
        walls.add(wall);
    }

    /** {@code one} ends where {@code other} starts. */
    void corner(WallDraft one, WallDraft other) {
        String id = "corner-" + (meetings.size() + 1);
        meetings.add(new Meeting(id, Meeting.Kind.CORNER, List.of(one.mark, other.mark), Optional.empty()));
        one.end(new WallEnd.Corner(id, quarters(other.unit.thickness())));
        other.start(new WallEnd.Corner(id, quarters(one.unit.thickness())));
    }

    /** {@code ending} starts against the side of {@code passing} at the place {@code from} and is bonded into it. */
    void tee(WallDraft ending, WallDraft passing, int from) {
        String id = "tee-" + (meetings.size() + 1);
        meetings.add(new Meeting(id, Meeting.Kind.TEE, List.of(ending.mark, passing.mark), Optional.empty()));
        ending.start(new WallEnd.Bonded(id, quarters(passing.unit.thickness())));
        passing.obstruct(Obstacle.Kind.TEE, from, from + ending.unit.thickness(), 1,
                Math.min(passing.courseCount, ending.courseCount), Optional.of(id));
    }

    BondRequest request() {
        return new BondRequest(walls.stream().map(WallDraft::wall).toList(), meetings);
    }
}
