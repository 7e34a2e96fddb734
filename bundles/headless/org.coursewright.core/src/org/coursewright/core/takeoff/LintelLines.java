package org.coursewright.core.takeoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.coursewright.core.takeoff.WallBrief.OpeningBrief;
import org.coursewright.measure.Length;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;

/** Lintels by type: how many, and how long together. */
final class LintelLines {

    private static final Formula COUNT = new Formula("lintels.count", "openings with this lintel", "geometry");
    private static final Formula LENGTH = new Formula("lintels.length",
            "Σ (width of opening + 2 × bearing), here by length", "geometry");

    private LintelLines() {
    }

    static List<TakeoffLine> of(List<WallBrief> walls) {
        SortedMap<String, List<OpeningBrief>> byType = new TreeMap<>();
        walls.stream().flatMap(wall -> wall.openings().stream()).forEach(opening -> opening.lintel().ifPresent(
                lintel -> byType.computeIfAbsent(lintel.type(), type -> new ArrayList<>()).add(opening)));
        List<TakeoffLine> lines = new ArrayList<>();
        byType.forEach((type, openings) -> add("lintel " + type, openings, lines));
        return lines;
    }

    private static void add(String item, List<OpeningBrief> openings, List<TakeoffLine> lines) {
        List<String> elements = openings.stream().map(OpeningBrief::element).toList();
        lines.add(TakeoffLines.of(item, Quantity.of(Fraction.of(openings.size()).toDecimal(), UnitCode.PIECE),
                new Trace(COUNT, List.of(), elements)));
        Length total = openings.stream().map(LintelLines::length).reduce(Length.ZERO, Length::plus);
        lines.add(TakeoffLines.of(item, Quantity.of(metres(total), UnitCode.METRE),
                new Trace(LENGTH, byLength(openings), elements)));
    }

    private static List<TraceInput> byLength(List<OpeningBrief> openings) {
        Map<Length, Long> counts = openings.stream()
                .collect(Collectors.groupingBy(LintelLines::length, TreeMap::new, Collectors.counting()));
        return counts.entrySet().stream()
                .map(entry -> TraceInput.of("lintels of " + entry.getKey(), entry.getValue())).toList();
    }

    private static Length length(OpeningBrief opening) {
        return opening.width().plus(opening.lintel().orElseThrow().bearing().times(2));
    }

    private static BigDecimal metres(Length length) {
        return Fraction.of(length.units(), 1000 * Length.UNITS_PER_MILLIMETRE).toDecimal();
    }
}
