package org.coursewright.exchange.schedule;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.coursewright.core.geometry.CentreLine;
import org.coursewright.core.geometry.WallNetwork;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.measure.Length;

/** How long the walls are between the outer faces of those they meet. */
final class Plan {

    private final Map<String, WallNetwork> storeys;

    /** Lays out walls that are sound and of known units. */
    Plan(List<WallRow> walls, Units units) {
        Map<String, List<CentreLine>> lines = walls.stream()
                .collect(Collectors.groupingBy(wall -> Schedule.key(wall.storey()),
                        LinkedHashMap::new, Collectors.mapping(wall -> line(wall, units), Collectors.toList())));
        storeys = new LinkedHashMap<>();
        lines.forEach((storey, ofStorey) -> storeys.put(storey, WallNetwork.of(ofStorey)));
    }

    /** @return length of a wall from outer face to outer face */
    Length outerLength(WallRow wall) {
        return storeys.get(Schedule.key(wall.storey())).faces(wall.mark()).outer();
    }

    private static CentreLine line(WallRow wall, Units units) {
        return new CentreLine(wall.mark(), wall.fromX(), wall.fromY(), wall.toX(), wall.toY(),
                wall.thickness(units.find(wall.unit()).orElseThrow()));
    }
}
