package org.coursewright.estimate.ui.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.coursewright.core.bond.UnitCount;
import org.coursewright.core.takeoff.TakeoffLine;

/**
 * A wall that a line was taken from.
 *
 * @param wall its mark
 * @param courses those that the line counts, or in which the pieces lie that it counts; empty if it counts the whole wall
 * @param kind {@code whole}, {@code special} or {@code cut} if the line counts pieces of one kind
 */
public record TakenFrom(String wall, SortedSet<Integer> courses, Optional<String> kind) {

    /** Formulas that count pieces of one kind, and what the command that shows pieces calls it. */
    private static final Map<String, Kind> KINDS = Map.of("units.whole", new Kind("whole", UnitCount::whole),
            "units.specials", new Kind("special", UnitCount::special), "units.cutting",
            new Kind("cut", UnitCount::cut));
    private static final Pattern COURSE = Pattern.compile("(.+)/(\\d+)");
    private static final Pattern PART = Pattern.compile("(.+)/[^/]+");

    private record Kind(String name, ToLongFunction<UnitCount> count) {

        SortedSet<Integer> courses(Map<Integer, UnitCount> laid) {
            return laid.entrySet().stream().filter(course -> count.applyAsLong(course.getValue()) > 0).map(
                    Map.Entry::getKey).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /**
     * @param line of a take-off
     * @param walls marks of all walls there are
     * @param laid pieces of a wall by course; none if that is not known
     * @return the walls it was taken from, in the order of the line; none if it was taken from something else
     */
    public static List<TakenFrom> of(TakeoffLine line, Set<String> walls,
            Function<String, ? extends Map<Integer, UnitCount>> laid) {
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
        Optional<Kind> kind = Optional.ofNullable(KINDS.get(line.formula()));
        kind.ifPresent(each -> found.forEach((wall, courses) -> courses.addAll(each.courses(laid.apply(wall)))));
        return found.entrySet().stream().map(each -> new TakenFrom(each.getKey(), each.getValue(), kind.map(
                Kind::name))).toList();
    }

    /** @return courses that lie on one another, the lowest and the highest of each group, from the bottom up */
    public List<List<Integer>> ranges() {
        List<List<Integer>> ranges = new ArrayList<>();
        for (int course : courses) {
            int last = ranges.size() - 1;
            if (last >= 0 && ranges.get(last).get(1) == course - 1) {
                ranges.set(last, List.of(ranges.get(last).get(0), course));
            } else {
                ranges.add(List.of(course, course));
            }
        }
        return ranges;
    }

    /** @return the one course that the line counts; empty if it counts several, or the whole wall */
    public Optional<Integer> onlyCourse() {
        return courses.size() == 1 ? Optional.of(courses.first()) : Optional.empty();
    }
}
