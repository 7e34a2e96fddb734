package org.coursewright.cli.takeoff;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.cli.FindingText;
import org.coursewright.cli.TextTable;
import org.coursewright.core.takeoff.TakeoffLine;
import org.coursewright.core.takeoff.TakeoffOutcome;
import org.coursewright.core.takeoff.UnitsTaken;

/** A take-off on one screen: its lines, the pieces, and what the figures rest on. */
final class TakeoffTable {

    private static final List<String> CAUTIONS = List.of(
            "Cut wet and keep dust down: it holds silica. Blocks are heavy: lift in pairs.",
            "Local building codes and the structural designer have the last word.");

    private final String project;
    private final TakeoffOutcome outcome;

    TakeoffTable(String project, TakeoffOutcome outcome) {
        this.project = project;
        this.outcome = outcome;
    }

    String text() {
        List<String> text = new ArrayList<>();
        text.add("Estimate for %s, walls: %d".formatted(project, outcome.walls().size()));
        text.addAll(table().lines());
        text.add("");
        outcome.units().forEach(units -> text.add(pieces(units)));
        text.add("This is an estimate. It assumes:");
        outcome.assumptions().forEach(sentence -> text.add("- " + sentence));
        text.addAll(CAUTIONS);
        text.add(FindingText.summary(outcome.findings()) + ".");
        return String.join("\n", text);
    }

    private TextTable table() {
        TextTable table = new TextTable();
        table.row("line", "quantity", "");
        for (int i = 0; i < outcome.lines().size(); i++) {
            TakeoffLine line = outcome.lines().get(i);
            table.row("%2d %s, %s".formatted(i + 1, line.item(), LineTitle.of(line.formula())),
                    Amount.rounded(line.quantity()), line.inFeet().map(Amount::rounded).orElse(""));
        }
        return table;
    }

    private static String pieces(UnitsTaken units) {
        return "%s %s as laid: %d whole, %d special, %d cut. It takes %d whole units, %d of them cut up%s.".formatted(
                units.unit(), units.bond(), units.pieces().whole(), units.pieces().special(), units.pieces().cut(),
                units.consumed(), units.cutUp(), units.proven() ? ", proven fewest" : "");
    }
}
