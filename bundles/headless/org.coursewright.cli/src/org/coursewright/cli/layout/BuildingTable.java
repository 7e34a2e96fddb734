package org.coursewright.cli.layout;

import java.util.List;
import java.util.stream.Collectors;

import org.coursewright.bond.BondResult;
import org.coursewright.cli.FindingText;
import org.coursewright.cli.TextTable;
import org.coursewright.cli.layout.LayResult.LaidWall;
import org.coursewright.core.bond.UnitCount;
import org.coursewright.measure.LengthFormat;

/** One line for each wall of the building, and totals. */
final class BuildingTable {

    private final LayResult result;
    private final LengthFormat format;

    BuildingTable(LayResult result, LengthFormat format) {
        this.result = result;
        this.format = format;
    }

    String text() {
        TextTable table = new TextTable();
        table.row("wall", "length", "courses", "whole", "special", "cut", "laps short", "not filled", "proven");
        result.walls().forEach(wall -> add(table, wall));
        UnitCount totals = result.totals();
        table.row("total", "", "", totals.whole(), totals.special(), totals.cut(), lapsShort(), notFilled(), proven());
        List<String> lines = table.lines();
        return String.join("\n", lines) + cutReasons() + "\n\n" + handing() + ".\n" + summary(totals);
    }

    private void add(TextTable table, LaidWall wall) {
        UnitCount count = wall.count();
        table.row(wall.face().mark(), format.format(wall.face().length()), wall.layout().courses().size(),
                count.whole(), count.special(), count.cut(), wall.layout().lapViolations(),
                wall.layout().unfillable().size(), wall.layout().optimal() ? "yes" : "no");
    }

    private String cutReasons() {
        CutTable table = new CutTable(format, result.meetings());
        return result.walls().stream().flatMap(wall -> table.lines(wall).stream())
                .collect(Collectors.joining("\n", "\n\n", "")).stripTrailing();
    }

    private String summary(UnitCount totals) {
        return "%s: %d walls, %d pieces: %d whole, %d special, %d cut.\n%s.".formatted(result.project(),
                result.walls().size(), totals.total(), totals.whole(), totals.special(), totals.cut(),
                FindingText.summary(result.findings()));
    }

    private String handing() {
        BondResult building = result.building();
        return building.handingOptimal()
                ? "Proven: no handing of its corners and no layout has fewer short laps or, with as few, fewer cuts"
                : "However its corners are handed, the building needs at least %d cuts"
                        .formatted(building.lowerBound());
    }

    private long lapsShort() {
        return result.walls().stream().mapToLong(wall -> wall.layout().lapViolations()).sum();
    }

    private long notFilled() {
        return result.walls().stream().mapToLong(wall -> wall.layout().unfillable().size()).sum();
    }

    private String proven() {
        long proven = result.walls().stream().filter(wall -> wall.layout().optimal()).count();
        return "%d of %d".formatted(proven, result.walls().size());
    }
}
