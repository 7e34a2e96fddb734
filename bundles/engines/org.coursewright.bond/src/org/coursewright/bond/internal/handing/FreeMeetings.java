package org.coursewright.bond.internal.handing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallFace;

/**
 * The meetings whose handing may be chosen, numbered from 0: neither pinned nor with a single wall that could run
 * through. Where more than {@value #MOST} of them matter to one wall, its ends and first tees are chosen and the others
 * handed as usual, for every handing of the wall is looked at.
 */
public final class FreeMeetings {

    /** 256 handings of one wall are soon looked at. */
    private static final int MOST = 8;

    private final Map<String, Meeting> byId = new HashMap<>();
    private final List<Meeting> free = new ArrayList<>();
    private final Map<String, Integer> numbers = new HashMap<>();
    private final Map<String, String> usual;
    private final boolean allFree;

    /** Finds those of a building. */
    public FreeMeetings(BondRequest request) {
        usual = AlternatingHanding.of(request);
        Set<String> crowded = new HashSet<>();
        for (WallFace wall : request.walls()) {
            ids(wall).stream().skip(MOST).forEach(crowded::add);
        }
        boolean all = true;
        for (Meeting meeting : request.meetings()) {
            byId.put(meeting.id(), meeting);
            if (meeting.throughOnOdd().isEmpty() && meeting.walls().size() > 1) {
                all &= !crowded.contains(meeting.id());
                if (!crowded.contains(meeting.id())) {
                    numbers.put(meeting.id(), free.size());
                    free.add(meeting);
                }
            }
        }
        allFree = all;
    }

    private static Set<String> ids(WallFace wall) {
        Set<String> ids = new LinkedHashSet<>(HandedWall.endMeetings(wall));
        wall.obstacles().stream().map(Obstacle::meeting).forEach(id -> id.ifPresent(ids::add));
        return ids;
    }

    /** Whether every meeting that could be chosen is. */
    public boolean areAllFree() {
        return allFree;
    }

    /** How many there are. */
    public int count() {
        return free.size();
    }

    /** @return the numbers of those that matter to the wall, ascending */
    public int[] of(WallFace wall) {
        return ids(wall).stream().filter(numbers::containsKey).mapToInt(numbers::get).sorted().toArray();
    }

    /** Costs of both choices of every meeting: a little for the one that is not usual. */
    public long[][] preferences() {
        long[][] preferences = new long[free.size()][];
        for (int number = 0; number < preferences.length; number++) {
            int usualChoice = free.get(number).walls().get(0).equals(usual.get(free.get(number).id())) ? 0 : 1;
            preferences[number] = new long[]{usualChoice, 1L - usualChoice};
        }
        return preferences;
    }

    /** @param choices of the meetings in {@code scope}, the first in the highest bit */
    public Handing handing(WallFace wall, int[] scope, int choices) {
        Map<String, String> onOdd = new HashMap<>();
        List<Meeting> meetings = new ArrayList<>();
        for (String id : ids(wall)) {
            meetings.add(byId.get(id));
            onOdd.put(id, usual.get(id));
        }
        for (int place = 0; place < scope.length; place++) {
            Meeting meeting = free.get(scope[place]);
            onOdd.put(meeting.id(), meeting.walls().get(choices >> scope.length - 1 - place & 1));
        }
        return new Handing(meetings, onOdd);
    }

    /** @param chosen by number, 0 for the first rival to run through in odd courses, 1 for the second */
    public Handing handing(int[] chosen) {
        Map<String, String> onOdd = new HashMap<>(usual);
        for (int number = 0; number < chosen.length; number++) {
            onOdd.put(free.get(number).id(), free.get(number).walls().get(chosen[number]));
        }
        return new Handing(List.copyOf(byId.values()), onOdd);
    }
}
