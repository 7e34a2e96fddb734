package org.coursewright.core.bond;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallFace;

/**
 * Makes a request of the walls that are sound: a wall that is not still stands in the plan, so the others keep their
 * corners with it, but it takes no turn at running through, and what it would have bonded into others is left out.
 */
record SoundRequest(List<WallFace> faces, List<Meeting> meetings) {

    BondRequest request() {
        Set<String> marks = faces.stream().map(WallFace::mark).collect(Collectors.toSet());
        Set<String> lostStems = meetings.stream().filter(meeting -> meeting.kind() == Meeting.Kind.TEE)
                .filter(meeting -> !marks.contains(meeting.walls().get(0))).map(Meeting::id)
                .collect(Collectors.toSet());
        return new BondRequest(faces.stream().map(face -> without(face, lostStems)).toList(),
                meetings.stream().filter(meeting -> !lostStems.contains(meeting.id()))
                        .map(meeting -> among(meeting, marks)).flatMap(Optional::stream).toList());
    }

    private static WallFace without(WallFace face, Set<String> lostStems) {
        List<Obstacle> kept = face.obstacles().stream()
                .filter(obstacle -> obstacle.meeting().filter(lostStems::contains).isEmpty()).toList();
        return new WallFace(face.mark(), face.length(), face.stock(), face.rule(), face.courses(), face.start(),
                face.end(), kept, face.pins());
    }

    private static Optional<Meeting> among(Meeting meeting, Set<String> marks) {
        List<String> walls = meeting.walls().stream().filter(marks::contains).toList();
        return walls.isEmpty()
                ? Optional.empty()
                : Optional.of(new Meeting(meeting.id(), meeting.kind(), walls,
                        meeting.throughOnOdd().filter(marks::contains)));
    }
}
