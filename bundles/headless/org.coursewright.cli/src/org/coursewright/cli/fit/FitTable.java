package org.coursewright.cli.fit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.BondResult;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.Dimension;
import org.coursewright.bond.advice.DimensionProfile;
import org.coursewright.bond.advice.Proposal;
import org.coursewright.cli.TextTable;
import org.coursewright.core.display.ProjectFormat;
import org.coursewright.core.fit.FitOutcome;
import org.coursewright.core.fit.FitProposal;
import org.coursewright.core.fit.Saving;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.project.Project;

/** Proposals as a builder reads them: one line for each, and what they come to. */
final class FitTable {

    /** Where neither the options nor the rates of the project tell. */
    private static final String UNKNOWN = "?";

    private final String name;
    private final LengthFormat format;
    private final FitOutcome outcome;
    private final boolean applied;

    FitTable(Project project, FitOutcome outcome, boolean applied) {
        this.name = Optional.ofNullable(project.getName()).orElse("");
        this.format = ProjectFormat.of(project);
        this.outcome = outcome;
        this.applied = applied;
    }

    String text() {
        List<String> lines = new ArrayList<>();
        lines.add(name);
        if (outcome.proposals().isEmpty()) {
            lines.add(nothing());
        } else {
            lines.add(applied ? "Changes made, in this order:" : "Proposed changes, to be made in this order:");
            lines.add("");
            lines.addAll(table().lines());
        }
        lines.add("");
        lines.addAll(summary());
        return String.join("\n", lines);
    }

    private String nothing() {
        return outcome.advice().profiles().isEmpty()
                ? "Nothing may change: nothing has a tolerance to move or to size. Give some, or let free ends of walls move with --wall-tolerance."
                : "No change within the tolerances and the budget was found to spare a cut.";
    }

    private TextTable table() {
        TextTable table = new TextTable();
        table.row("change", "from", "to", "by", "cuts", "laps short", "blocks cut up", "blocks spared",
                "minutes spared", "cost spared");
        for (FitProposal proposal : outcome.proposals()) {
            Proposal change = proposal.change();
            table.row(what(change.adjustable()), format.format(change.from()), format.format(change.to()),
                    (change.to().isLessThan(change.from()) ? "-" : "+") + format.format(change.movement()),
                    change.cutsBefore() + " -> " + change.cutsAfter(),
                    change.lapsBefore() + " -> " + change.lapsAfter(),
                    proposal.before().cutUp() + " -> " + proposal.after().cutUp(), proposal.saving().blocks(),
                    proposal.saving().minutes().map(FitTable::shown).orElse(UNKNOWN),
                    proposal.saving().cost().map(cost -> cost.rounded().toString()).orElse(UNKNOWN));
        }
        return table;
    }

    private static String what(Adjustable adjustable) {
        String wall = "wall " + adjustable.wall();
        return adjustable.opening().map(opening -> "%s, %s: %s".formatted(wall, opening,
                adjustable.dimension() == Dimension.OFFSET ? "move" : "width"))
                .orElse(wall + (adjustable.dimension() == Dimension.OFFSET ? ": move sideways" : ": length"));
    }

    private List<String> summary() {
        List<String> lines = new ArrayList<>();
        BondResult before = outcome.advice().before();
        BondResult after = outcome.advice().after();
        lines.add("As planned: %d cuts, %d laps short%s.".formatted(before.cutPieces(), before.lapViolations(),
                proven(before)));
        if (!outcome.proposals().isEmpty()) {
            Saving saving = outcome.saving();
            lines.add("With all changes, %s together: %d cuts, %d laps short%s.".formatted(
                    format.format(outcome.advice().movement()), after.cutPieces(), after.lapViolations(),
                    proven(after)));
            lines.add("Spared: %d cuts, %d blocks, %d specials%s%s.".formatted(saving.cuts(), saving.blocks(),
                    saving.units().specials(),
                    saving.minutes().map(minutes -> ", %s minutes".formatted(shown(minutes))).orElse(""),
                    saving.cost().map(cost -> ", " + cost.rounded()).orElse("")));
        }
        long dimensions = outcome.advice().profiles().size();
        long points = outcome.advice().profiles().stream().map(DimensionProfile::points).mapToLong(List::size).sum();
        lines.add("Looked at %d values of %d dimensions; openings and lintels moved want the designer's eye."
                .formatted(points, dimensions));
        return lines;
    }

    private static String shown(BigDecimal minutes) {
        return minutes.setScale(0, RoundingMode.HALF_UP).toPlainString();
    }

    private static String proven(BondResult result) {
        return result.handingOptimal() ? ", proven the least" : ", at least %d cuts".formatted(result.lowerBound());
    }
}
