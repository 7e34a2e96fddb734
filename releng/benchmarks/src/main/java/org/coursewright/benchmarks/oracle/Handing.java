package org.coursewright.benchmarks.oracle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.bond.Course;
import org.coursewright.bond.Meeting;

/**
 * Which wall runs through where walls meet.
 *
 * @param meetings by id
 * @param throughOnOdd by meeting id the mark of the wall that runs through in odd courses
 */
public record Handing(Map<String, Meeting> meetings, Map<String, String> throughOnOdd) {

    public Handing {
        meetings = Map.copyOf(meetings);
        throughOnOdd = Map.copyOf(throughOnOdd);
    }

    /** @return the handing of these meetings that was chosen as {@code throughOnOdd} says */
    public static Handing of(List<Meeting> meetings, Map<String, String> throughOnOdd) {
        Map<String, Meeting> byId = new HashMap<>();
        meetings.forEach(meeting -> byId.put(meeting.id(), meeting));
        return new Handing(byId, throughOnOdd);
    }

    /** @return every handing that these meetings allow, two for each that nobody has decided */
    public static List<Handing> all(List<Meeting> meetings) {
        List<Map<String, String>> choices = List.of(Map.of());
        for (Meeting meeting : meetings) {
            List<Map<String, String>> longer = new ArrayList<>();
            for (Map<String, String> choice : choices) {
                for (String mark : candidates(meeting)) {
                    Map<String, String> next = new HashMap<>(choice);
                    next.put(meeting.id(), mark);
                    longer.add(next);
                }
            }
            choices = longer;
        }
        return choices.stream().map(choice -> of(meetings, choice)).toList();
    }

    /** @return the walls of which one may run through in odd courses */
    static List<String> candidates(Meeting meeting) {
        return meeting.throughOnOdd().map(List::of)
                .orElseGet(() -> meeting.walls().subList(0, Math.min(2, meeting.walls().size())));
    }

    /** @return whether the wall {@code mark} runs through {@code meeting} in {@code course} */
    boolean runsThrough(String meeting, String mark, Course course) {
        List<String> turns = meetings.get(meeting).walls();
        if (turns.indexOf(mark) > 1) {
            return false;
        }
        return mark.equals(throughOnOdd.get(meeting)) == course.isOdd();
    }

    /** @return whether the wall that ends at a tee runs through it in {@code course} and so parts the wall it meets */
    boolean parts(String meeting, Course course) {
        return runsThrough(meeting, meetings.get(meeting).walls().get(0), course);
    }
}
