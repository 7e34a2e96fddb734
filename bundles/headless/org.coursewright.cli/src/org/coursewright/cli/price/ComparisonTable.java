package org.coursewright.cli.price;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

import org.coursewright.cli.FindingText;
import org.coursewright.cli.TextTable;
import org.coursewright.core.cost.CostSums;
import org.coursewright.core.cost.GroupSum;
import org.coursewright.core.cost.PriceComparison;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceRange;
import org.coursewright.measure.Money;

/** Scenarios side by side. */
final class ComparisonTable {

    private final String project;
    private final PriceComparison comparison;

    ComparisonTable(String project, PriceComparison comparison) {
        this.project = project;
        this.comparison = comparison;
    }

    String text() {
        List<String> text = new ArrayList<>();
        text.add("Scenarios of %s side by side, in %s".formatted(project, comparison.prices().get(0).currency()));
        text.addAll(table().lines());
        text.add("");
        comparison.prices().stream().filter(price -> !price.description().isEmpty()).forEach(price -> text.add(price
                .scenario() + ": " + price.description()));
        text.add("Every scenario is laid by itself. This is an estimate; price one alone for what it assumes.");
        comparison.prices().stream().filter(price -> !price.isComplete()).forEach(price -> text.add(
                "%s has lines without a price: its total is too low.".formatted(price.scenario())));
        comparison.prices().forEach(price -> text.add("%s: %s.".formatted(price.scenario(), FindingText.summary(price
                .findings()))));
        return String.join("\n", text);
    }

    private TextTable table() {
        TextTable table = new TextTable();
        row("", PriceOutcome::scenario, table);
        sums("material", CostSums::material, table);
        sums("labour", CostSums::labour, table);
        sums("plant", CostSums::plant, table);
        sums("haulage", CostSums::haulage, table);
        sums("tax", CostSums::tax, table);
        sums("overhead", CostSums::overhead, table);
        sums("contingency", CostSums::contingency, table);
        sums("total", CostSums::total, table);
        table.row(cells("above the first", comparison.differences().stream().map(Figures::money)));
        groups(PriceOutcome::byElement, table);
        groups(PriceOutcome::byTrade, table);
        range("P10", PriceRange::p10, table);
        range("P50", PriceRange::p50, table);
        range("P80", PriceRange::p80, table);
        range("P90", PriceRange::p90, table);
        return table;
    }

    private void sums(String title, Function<CostSums, Money> sum, TextTable table) {
        row(title, price -> Figures.money(sum.apply(price.total())), table);
    }

    private void range(String title, Function<PriceRange, Money> value, TextTable table) {
        row(title, price -> price.range().map(value).map(Figures::money).orElse("none"), table);
    }

    private void groups(Function<PriceOutcome, List<GroupSum>> grouping, TextTable table) {
        SortedMap<String, String> titles = new TreeMap<>();
        comparison.prices().forEach(price -> grouping.apply(price).forEach(group -> titles.put(group.code(), group
                .title().equals(group.code()) ? group.code() : group.code() + " " + group.title())));
        titles.forEach((code, title) -> row(title, price -> total(grouping.apply(price), code), table));
    }

    private static String total(List<GroupSum> groups, String code) {
        Optional<GroupSum> found = groups.stream().filter(group -> group.code().equals(code)).findFirst();
        return found.map(group -> Figures.money(group.cost().total())).orElse("0");
    }

    private void row(String title, Function<PriceOutcome, String> cell, TextTable table) {
        table.row(cells(title, comparison.prices().stream().map(cell)));
    }

    private static Object[] cells(String title, Stream<String> cells) {
        return Stream.concat(Stream.of(title), cells).toArray();
    }
}
