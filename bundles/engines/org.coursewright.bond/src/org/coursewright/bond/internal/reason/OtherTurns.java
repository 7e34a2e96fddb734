package org.coursewright.bond.internal.reason;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.bond.Meeting;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.run.RunFinder;
import org.coursewright.bond.internal.run.RunSpan;

/** The runs of a wall as they would be if the walls of one of its meetings took turns the other way. */
final class OtherTurns {

    private final Map<String, List<List<RunSpan>>> runs = new LinkedHashMap<>();

    OtherTurns(WallFace wall, List<Meeting> meetings, Map<String, String> onOdd) {
        List<String> own = meetingsOf(wall);
        for (Meeting meeting : meetings) {
            Optional<String> other = Handing.rivals(meeting).stream()
                    .filter(mark -> !mark.equals(onOdd.get(meeting.id()))).findFirst();
            if (own.contains(meeting.id()) && other.isPresent()) {
                Map<String, String> turned = new HashMap<>(onOdd);
                turned.put(meeting.id(), other.get());
                runs.put(meeting.id(), new RunFinder(wall, new Handing(meetings, turned)).find());
            }
        }
    }

    private static List<String> meetingsOf(WallFace wall) {
        return Stream.concat(Stream.of(wall.start(), wall.end()).flatMap(end -> meetingOf(end).stream()),
                wall.obstacles().stream().flatMap(obstacle -> obstacle.meeting().stream())).toList();
    }

    private static Optional<String> meetingOf(WallEnd end) {
        if (end instanceof WallEnd.Corner corner) {
            return Optional.of(corner.meeting());
        }
        return end instanceof WallEnd.Bonded bonded ? Optional.of(bonded.meeting()) : Optional.empty();
    }

    /** By meeting the run that would lie at the middle of this one, where it would be another one. */
    Map<String, RunSpan> of(RunSpan run) {
        Map<String, RunSpan> others = new LinkedHashMap<>();
        long middle = (run.from() + run.to()) / 2;
        runs.forEach((meeting, courses) -> courses.get(run.course()).stream()
                .filter(other -> other.from() <= middle && middle < other.to() && !other.equals(run)).findFirst()
                .ifPresent(other -> others.put(meeting, other)));
        return others;
    }
}
