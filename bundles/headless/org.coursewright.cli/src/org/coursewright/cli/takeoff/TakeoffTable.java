package org.coursewright.cli.takeoff;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.cli.FindingText;
import org.coursewright.cli.TextTable;
import org.coursewright.core.cost.ResourceLine;
import org.coursewright.core.display.Amount;
import org.coursewright.core.takeoff.LineTitle;
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

    private final List<ResourceLine> resources;
    private final Amount amounts;

    /** @param resources to be listed too, or none */
    TakeoffTable(String project, TakeoffOutcome outcome, List<ResourceLine> resources, Amount amounts) {
        this.project = project;
        this.outcome = outcome;
        this.resources = resources;
        this.amounts = amounts;
    }

    String text() {
        List<String> text = new ArrayList<>();
        text.add("Estimate for %s, walls: %d".formatted(project, outcome.walls().size()));
        text.addAll(table().lines());
        text.add("");
        if (!resources.isEmpty()) {
            text.addAll(resources().lines());
            text.add("");
        }
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
            table.row("%2d %s, %s".formatted(i + 1, amounts.inProject(line.item()), LineTitle.of(line.formula())),
                    amounts.rounded(line.quantity()), line.inFeet().map(amounts::rounded).orElse(""));
        }
        return table;
    }

    private TextTable resources() {
        TextTable table = new TextTable();
        table.row("resource", "element", "quantity");
        resources.forEach(line -> table.row(line.amount().item() + ", " + line.work().words(), line.element(), amounts
                .rounded(line.amount().quantity())));
        return table;
    }

    private static String pieces(UnitsTaken units) {
        return "%s %s as laid: %d whole, %d special, %d cut. It takes %d whole units, %d of them cut up%s.".formatted(
                units.unit(), units.bond(), units.pieces().whole(), units.pieces().special(), units.pieces().cut(),
                units.consumed(), units.cutUp(), units.proven() ? ", proven fewest" : "");
    }
}
