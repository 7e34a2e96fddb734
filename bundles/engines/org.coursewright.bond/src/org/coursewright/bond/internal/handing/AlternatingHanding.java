package org.coursewright.bond.internal.handing;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.WallFace;

/**
 * The usual handing: every wall runs through at one end in odd courses and at the other in even ones, as far as pinned
 * choices allow. Going round a closed loop every wall hands over to the next, so the loop closes. Of handings with which
 * a building is laid equally well this one is chosen.
 */
public final class AlternatingHanding {

    private final List<Meeting> meetings;
    private final Map<String, Meeting> byId = new HashMap<>();
    private final Map<String, List<String>> meetingsOfWall = new HashMap<>();
    private final Map<String, String> onOdd = new LinkedHashMap<>();
    private final Deque<Meeting> decided = new ArrayDeque<>();

    private AlternatingHanding(BondRequest request) {
        meetings = request.meetings();
        meetings.forEach(meeting -> byId.put(meeting.id(), meeting));
        for (WallFace wall : request.walls()) {
            meetingsOfWall.put(wall.mark(), HandedWall.endMeetings(wall));
        }
    }

    /** @return by meeting id the mark of the wall that runs through in odd courses */
    public static Map<String, String> of(BondRequest request) {
        AlternatingHanding choice = new AlternatingHanding(request);
        choice.meetings.forEach(meeting -> meeting.throughOnOdd().ifPresent(mark -> choice.decide(meeting, mark)));
        choice.spread();
        for (Meeting meeting : choice.meetings) {
            if (!choice.onOdd.containsKey(meeting.id())) {
                choice.decide(meeting, meeting.walls().get(0));
                choice.spread();
            }
        }
        return Map.copyOf(choice.onOdd);
    }

    private void decide(Meeting meeting, String through) {
        if (onOdd.putIfAbsent(meeting.id(), through) == null) {
            decided.add(meeting);
        }
    }

    private void spread() {
        while (!decided.isEmpty()) {
            Meeting meeting = decided.remove();
            for (String wall : Handing.rivals(meeting)) {
                handOver(wall, meeting);
            }
        }
    }

    /** At its other end the wall does the opposite of what it does here. */
    private void handOver(String wall, Meeting here) {
        boolean throughHere = wall.equals(onOdd.get(here.id()));
        for (String id : meetingsOfWall.get(wall)) {
            Meeting there = byId.get(id);
            List<String> rivals = Handing.rivals(there);
            if (there != here && rivals.contains(wall)) {
                rivals.stream().filter(rival -> rival.equals(wall) != throughHere).findFirst()
                        .ifPresent(rival -> decide(there, rival));
            }
        }
    }
}
