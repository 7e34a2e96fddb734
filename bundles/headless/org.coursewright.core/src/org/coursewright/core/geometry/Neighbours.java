package org.coursewright.core.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which lines are close enough to others to be looked at, found by a sweep from west to east. Takes time in proportion
 * to the lines times those that share their range of eastings.
 */
final class Neighbours {

    private final Map<Line, List<Line>> close = new HashMap<>();

    /** @param margin how far apart the boxes around two lines may be (1/320 mm) */
    Neighbours(List<Line> lines, long margin) {
        lines.forEach(line -> close.put(line, new ArrayList<>()));
        List<Line> fromWest = lines.stream().sorted(Comparator.comparingLong(Line::west)).toList();
        for (int i = 0; i < fromWest.size(); i++) {
            Line line = fromWest.get(i);
            long limit = line.east() + margin;
            for (int j = i + 1; j < fromWest.size() && fromWest.get(j).west() <= limit; j++) {
                joinIfClose(line, fromWest.get(j), margin);
            }
        }
        close.values().forEach(list -> list.sort(Comparator.comparingInt(Line::order)));
    }

    /** @return the lines close to a line, in the order they were given, without itself */
    List<Line> of(Line line) {
        return close.get(line);
    }

    private void joinIfClose(Line line, Line other, long margin) {
        if (line.boxIsWithin(margin, other)) {
            close.get(line).add(other);
            close.get(other).add(line);
        }
    }
}
