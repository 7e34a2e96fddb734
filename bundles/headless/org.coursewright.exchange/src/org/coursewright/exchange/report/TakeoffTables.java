package org.coursewright.exchange.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

import org.coursewright.core.cost.ResourceLine;
import org.coursewright.core.takeoff.CourseMortar;
import org.coursewright.core.takeoff.TakeoffLine;
import org.coursewright.core.takeoff.TakeoffOutcome;
import org.coursewright.core.takeoff.WallTaken;
import org.coursewright.exchange.report.ReportTable.Cell;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;

/** A take-off as tables: lines, resources, walls. */
public final class TakeoffTables {

    private static final int DECIMALS = 3;

    private TakeoffTables() {
    }

    /**
     * @param project its name
     * @param outcome the take-off
     * @param resources what it takes besides, or none
     * @return the report; its first table has the lines
     */
    public static Report of(String project, TakeoffOutcome outcome, List<ResourceLine> resources) {
        List<ReportTable> tables = new ArrayList<>(List.of(lines(outcome.lines())));
        if (!resources.isEmpty()) {
            tables.add(resources(resources));
        }
        tables.add(walls(outcome.walls()));
        List<String> notes = new ArrayList<>(List.of("This is an estimate. It assumes:"));
        notes.addAll(outcome.assumptions());
        notes.add("Cut wet and keep dust down: it holds silica. Blocks are heavy: lift in pairs.");
        notes.add("Local building codes and the structural designer have the last word.");
        return new Report("Take-off of " + project, tables, notes);
    }

    private static ReportTable lines(List<TakeoffLine> lines) {
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            TakeoffLine line = lines.get(i);
            rows.add(List.of(Cell.of(i + 1), Cell.of(line.item()), number(line.quantity()), Cell.of(unit(line
                    .quantity())), Cell.of(line.formula()), Cell.of(line.expression()), Cell.of(line.source())));
        }
        return new ReportTable("Take-off",
                List.of("line", "item", "quantity", "unit", "formula", "expression", "source"),
                rows);
    }

    private static ReportTable resources(List<ResourceLine> resources) {
        return new ReportTable("Resources", List.of("resource", "work", "element", "quantity", "unit", "formula"),
                resources.stream().map(line -> List.of(Cell.of(line.amount().item()), Cell.of(line.work().words()), Cell
                        .of(line.element()), number(line.amount().quantity()), Cell.of(unit(line.amount().quantity())),
                        Cell.of(line.amount().formula()))).toList());
    }

    private static ReportTable walls(List<WallTaken> walls) {
        return new ReportTable("Walls", List.of("wall", "unit", "bond", "whole", "special", "cut", "face m\u00b2",
                "mortar m\u00b3"),
                walls.stream().map(wall -> List.of(Cell.of(wall.mark()), Cell.of(wall.unit()), Cell.of(
                        wall.bond()), Cell.of(wall.pieces().whole()), Cell.of(wall.pieces().special()),
                        Cell.of(wall
                                .pieces().cut()),
                        number(wall.face().quantity()), Cell.of(rounded(wall.courses().stream().map(
                                CourseMortar::net).map(Quantity::value).reduce(BigDecimal.ZERO, BigDecimal::add)))))
                        .toList());
    }

    static Cell number(Quantity quantity) {
        return Cell.of(rounded(quantity.value()));
    }

    private static BigDecimal rounded(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() <= 0 ? stripped.setScale(0) : value.setScale(DECIMALS, RoundingMode.HALF_UP);
    }

    private static String unit(Quantity quantity) {
        return quantity.unit().map(UnitCode::symbol).orElse(quantity.unitCode());
    }
}
