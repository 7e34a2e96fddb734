package org.coursewright.bond.internal.handing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.bond.Meeting;

/** Which wall runs through at every meeting, in odd and in even courses. */
public final class Handing {

    private final Map<String, String> onOdd;
    private final Map<String, String> onEven = new HashMap<>();
    private final Map<String, Meeting> meetings = new HashMap<>();

    /** @param onOdd by meeting id the mark of the wall that runs through in odd courses; its rival does in even ones */
    public Handing(List<Meeting> meetings, Map<String, String> onOdd) {
        this.onOdd = Map.copyOf(onOdd);
        for (Meeting meeting : meetings) {
            this.meetings.put(meeting.id(), meeting);
            for (String mark : rivals(meeting)) {
                if (!mark.equals(onOdd.get(meeting.id()))) {
                    onEven.putIfAbsent(meeting.id(), mark);
                }
            }
        }
    }

    /** The walls that take turns at a meeting: the first two. */
    public static List<String> rivals(Meeting meeting) {
        return meeting.walls().subList(0, Math.min(2, meeting.walls().size()));
    }

    /** By meeting id the mark of the wall that runs through in odd courses. */
    public Map<String, String> onOdd() {
        return onOdd;
    }

    /** Whether a wall runs through at a meeting, in odd or in even courses. */
    public boolean runsThrough(String meeting, String mark, boolean odd) {
        return mark.equals((odd ? onOdd : onEven).get(meeting));
    }

    /** Whether the wall that ends at a tee runs through there, and so interrupts the wall that passes. */
    public boolean endingWallRunsThrough(String meeting, boolean odd) {
        return runsThrough(meeting, meetings.get(meeting).walls().get(0), odd);
    }
}
