package org.coursewright.cli.price;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.cli.FindingText;
import org.coursewright.cli.TextTable;
import org.coursewright.core.cost.CostSums;
import org.coursewright.core.cost.GroupSum;
import org.coursewright.core.cost.PriceLine;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceRange;
import org.coursewright.core.finding.Severity;

/** The price of one scenario: build-up, elements, trades, range, and every line. */
final class PriceTable {

    private static final int BARS = 8;
    private static final List<String> CAUTIONS = List.of(
            "Prices are for planning: ask for offers before you commit to any.",
            "Local building codes and the structural designer have the last word.");

    private final String project;
    private final PriceOutcome price;
    private final SpecialsTable specials;

    PriceTable(String project, PriceOutcome price, SpecialsTable specials) {
        this.project = project;
        this.price = price;
        this.specials = specials;
    }

    String text() {
        List<String> text = new ArrayList<>();
        text.add("Price of %s, %s, in %s%s".formatted(project, price.scenario(), price.currency(), price.description()
                .isEmpty() ? "" : ": " + price.description()));
        text.addAll(buildUp(price.total()));
        text.add("");
        text.addAll(groups("element", price.byElement(), true));
        text.add("");
        text.addAll(groups("trade", price.byTrade(), false));
        price.range().ifPresent(range -> text.addAll(range(range)));
        text.add("");
        text.addAll(lines());
        text.addAll(specials.text());
        text.add("");
        text.add("This is an estimate. It assumes:");
        price.assumptions().forEach(sentence -> text.add("- " + sentence));
        price.oldestRate().ifPresent(date -> text.add("- The oldest rate is of %s.".formatted(date)));
        text.addAll(CAUTIONS);
        if (!price.isComplete()) {
            text.add("Some lines have no price: the total is too low.");
        }
        price.findings().stream().filter(finding -> finding.severity().compareTo(
                Severity.ERROR) <= 0).forEach(finding -> text.add(
                        FindingText.line(finding)));
        text.add(FindingText.summary(price.findings()) + ".");
        return String.join("\n", text);
    }

    private static List<String> buildUp(CostSums cost) {
        TextTable table = new TextTable();
        table.row("material", Figures.money(cost.material()));
        table.row("labour", Figures.money(cost.labour()));
        table.row("plant", Figures.money(cost.plant()));
        table.row("haulage", Figures.money(cost.haulage()));
        table.row("tax", Figures.money(cost.tax()));
        table.row("overhead", Figures.money(cost.overhead()));
        table.row("contingency", Figures.money(cost.contingency()));
        table.row("total", Figures.money(cost.total()));
        return table.lines();
    }

    private static List<String> groups(String title, List<GroupSum> groups, boolean withCode) {
        TextTable table = new TextTable();
        table.row("by " + title, "direct", "on top", "total");
        groups.forEach(group -> table.row(withCode ? group.code() + " " + group.title() : group.title(), Figures.money(
                group.cost().direct()), Figures.money(group.cost().total().minus(group.cost().direct())),
                Figures.money(
                        group.cost().total())));
        return table.lines();
    }

    private static List<String> range(PriceRange range) {
        List<String> text = new ArrayList<>();
        text.add("");
        text.add(
                "Range of %d draws (seed %d): P10 %s, P50 %s, P80 %s, P90 %s; mean %s, standard deviation %s".formatted(
                        range.draws(), range.seed(), Figures.money(range.p10()), Figures.money(range.p50()),
                        Figures.money(range
                                .p80()),
                        Figures.money(range.p90()), Figures.money(range.mean()),
                        Figures.money(range
                                .deviation())));
        TextTable table = new TextTable();
        table.row("what drives it", "low", "high", "of variance");
        range.lines().stream().limit(BARS).forEach(swing -> table.row(swing.name(), Figures.money(swing.low()), Figures
                .money(swing.high()), Figures.percent(swing.contribution())));
        text.addAll(table.lines());
        return text;
    }

    private List<String> lines() {
        TextTable table = new TextTable();
        table.row("line", "element", "quantity", "rate", "direct", "total");
        price.lines().forEach(line -> add(line, table));
        return table.lines();
    }

    private static void add(PriceLine line, TextTable table) {
        String title = "%3d %s, %s".formatted(line.number(), line.resource().amount().item(), line.resource().work()
                .words());
        if (line.priced().isPresent()) {
            PriceLine.Priced priced = line.priced().get();
            table.row(title, line.element(), Figures.quantity(priced.quantity()), priced.rate().amount()
                    .toPlainString(), Figures.money(priced.cost().direct()), Figures.money(priced.cost().total()));
        } else {
            table.row(title, line.element(), Figures.quantity(line.resource().amount().quantity()), "none", "none",
                    "none");
        }
    }
}
