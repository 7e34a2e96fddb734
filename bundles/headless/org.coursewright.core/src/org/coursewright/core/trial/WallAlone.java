package org.coursewright.core.trial;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;

/**
 * One wall of a request by itself, its corners handed as they are in the building. Walls that it meets are there by name
 * only, without courses, so that nothing else has to be laid.
 *
 * @param mark of the wall
 * @param handing by meeting the wall that runs through in odd courses
 */
record WallAlone(String mark, Map<String, String> handing) {

    /** @return the wall's part of the request, without walls if the request does not have it */
    BondRequest in(BondRequest building) {
        Optional<WallFace> wall = building.walls().stream().filter(each -> each.mark().equals(mark)).findFirst();
        return wall.map(face -> with(face, building)).orElseGet(() -> new BondRequest(List.of(), List.of()));
    }

    private BondRequest with(WallFace face, BondRequest building) {
        List<Meeting> meetings = building.meetings().stream().filter(each -> each.walls().contains(mark))
                .map(this::handed).toList();
        Set<String> met = new LinkedHashSet<>();
        meetings.forEach(meeting -> met.addAll(meeting.walls()));
        met.remove(mark);
        List<WallFace> walls = new ArrayList<>(List.of(face));
        building.walls().stream().filter(each -> met.contains(each.mark())).map(WallAlone::byName).forEach(walls::add);
        return new BondRequest(walls, meetings);
    }

    private Meeting handed(Meeting meeting) {
        return new Meeting(meeting.id(), meeting.kind(), meeting.walls(),
                meeting.throughOnOdd().or(() -> Optional.ofNullable(handing.get(meeting.id()))));
    }

    private static WallFace byName(WallFace wall) {
        return new WallFace(wall.mark(), wall.length(), wall.stock(), wall.rule(), List.of(), new WallEnd.Free(),
                new WallEnd.Free(), List.of());
    }
}
