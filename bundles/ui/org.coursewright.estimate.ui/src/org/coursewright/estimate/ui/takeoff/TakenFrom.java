package org.coursewright.estimate.ui.takeoff;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.coursewright.core.takeoff.TakeoffLine;

/**
 * A wall that a line was taken from.
 *
 * @param wall its mark
 * @param courses those that the line counts; empty if it counts the whole wall
 * @param kind {@code whole}, {@code special} or {@code cut} if the line counts pieces of one kind
 */
public record TakenFrom(String wall, SortedSet<Integer> courses, Optional<String> kind) {

    /** Formulas that count pieces of one kind, and what the command that shows pieces calls it. */
    private static final Map<String, String> KINDS = Map.of("units.whole", "whole", "units.specials", "special",
            "units.cutting", "cut");
    private static final Pattern COURSE = Pattern.compile("(.+)/(\\d+)");
    private static final Pattern PART = Pattern.compile("(.+)/[^/]+");

    /**
     * @param line of a take-off
     * @param walls marks of all walls there are
     * @return the walls it was taken from, in the order of the line; none if it was taken from something else
     */
    public static List<TakenFrom> of(TakeoffLine line, Set<String> walls) {
        Map<String, SortedSet<Integer>> found = new LinkedHashMap<>();
        for (String element : line.elements()) {
            Matcher course = COURSE.matcher(element);
            Matcher part = PART.matcher(element);
            if (walls.contains(element)) {
                found.computeIfAbsent(element, any -> new TreeSet<>());
            } else if (course.matches() && walls.contains(course.group(1))) {
                found.computeIfAbsent(course.group(1), any -> new TreeSet<>()).add(Integer.valueOf(course.group(2)));
            } else if (part.matches() && walls.contains(part.group(1))) {
                found.computeIfAbsent(part.group(1), any -> new TreeSet<>());
            }
        }
        Optional<String> kind = Optional.ofNullable(KINDS.get(line.formula()));
        return found.entrySet().stream().map(each -> new TakenFrom(each.getKey(), each.getValue(), kind)).toList();
    }

    /** @return the one course that the line counts; empty if it counts several, or the whole wall */
    public Optional<Integer> onlyCourse() {
        return courses.size() == 1 ? Optional.of(courses.first()) : Optional.empty();
    }
}
