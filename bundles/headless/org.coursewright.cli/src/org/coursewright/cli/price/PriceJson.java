package org.coursewright.cli.price;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

import org.coursewright.cli.FindingText;
import org.coursewright.cli.JsonText;
import org.coursewright.core.cost.CostSums;
import org.coursewright.core.cost.GroupSum;
import org.coursewright.core.cost.MakeOrCutLine;
import org.coursewright.core.cost.PriceComparison;
import org.coursewright.core.cost.PriceLine;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceRange;
import org.coursewright.core.takeoff.TakeoffLine;
import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;

/** Writes prices as {@code coursewright.price/1}, described in docs/formats/price-json.md. */
final class PriceJson {

    private static final String SCHEMA = "coursewright.price/1";

    private final JsonText json;

    private PriceJson(JsonText json) {
        this.json = json;
    }

    static String of(String project, List<PriceOutcome> prices, List<MakeOrCutLine> specials) {
        return JsonText.document(SCHEMA, json -> new PriceJson(json).write(project, prices, specials));
    }

    private void write(String project, List<PriceOutcome> prices, List<MakeOrCutLine> specials) {
        json.member("project", project);
        json.member("estimate", true);
        json.member("currency", prices.get(0).currency().getCurrencyCode());
        List<Money> differences = new PriceComparison(prices).differences();
        json.array("scenarios", prices, price -> json.object(() -> {
            write(price);
            json.member("difference", differences.get(prices.indexOf(price)).amount());
            FindingText.write(price.findings(), json);
        }));
        json.array("makeOrCut", specials, line -> json.object(() -> write(line)));
    }

    private void write(MakeOrCutLine line) {
        json.member("unit", line.unit());
        json.member("bond", line.bond());
        json.member("length", line.length());
        json.member("stocked", line.stocked());
        json.member("pieces", line.pieces());
        json.member("unitsSaved", line.unitsSaved());
        json.member("cutting", line.cutting().amount());
        json.member("making", line.making().amount());
        line.breakEven().ifPresent(pieces -> json.member("breakEven", pieces));
        json.member("makingPays", line.makingPays());
        json.member("note", line.note());
    }

    private void write(PriceOutcome price) {
        json.member("scenario", price.scenario());
        json.member("description", price.description());
        json.member("complete", price.isComplete());
        json.object("cost", () -> write(price.total()));
        json.array("byElement", price.byElement(), group -> json.object(() -> write(group)));
        json.array("byTrade", price.byTrade(), group -> json.object(() -> write(group)));
        price.range().ifPresent(range -> json.object("range", () -> write(range)));
        price.oldestRate().map(LocalDate::toString).ifPresent(date -> json.member("oldestRate", date));
        json.texts("assumptions", price.assumptions());
        json.array("lines", price.lines(), line -> json.object(() -> write(line)));
    }

    private void write(CostSums cost) {
        json.member("material", cost.material().amount());
        json.member("labour", cost.labour().amount());
        json.member("plant", cost.plant().amount());
        json.member("haulage", cost.haulage().amount());
        json.member("tax", cost.tax().amount());
        json.member("overhead", cost.overhead().amount());
        json.member("contingency", cost.contingency().amount());
        json.member("total", cost.total().amount());
    }

    private void write(GroupSum group) {
        json.member("code", group.code());
        json.member("title", group.title());
        write(group.cost());
    }

    private void write(PriceRange range) {
        json.member("draws", range.draws());
        json.member("seed", range.seed());
        json.member("mean", range.mean().amount());
        json.member("deviation", range.deviation().amount());
        json.member("p10", range.p10().amount());
        json.member("p50", range.p50().amount());
        json.member("p80", range.p80().amount());
        json.member("p90", range.p90().amount());
        json.array("lines", range.lines(), swing -> json.object(() -> write(swing)));
        json.array("sources", range.sources(), swing -> json.object(() -> write(swing)));
    }

    private void write(PriceRange.Swing swing) {
        json.member("name", swing.name());
        json.member("low", swing.low().amount());
        json.member("high", swing.high().amount());
        json.member("contribution", swing.contribution());
    }

    private void write(PriceLine line) {
        json.member("line", line.number());
        json.member("resource", line.resource().resource());
        json.member("work", line.resource().work().name().toLowerCase(Locale.ROOT));
        json.member("element", line.element());
        json.member("trade", line.trade());
        write(line.resource().amount());
        line.priced().ifPresent(priced -> json.object("price", () -> write(priced)));
        line.problem().ifPresent(problem -> json.member("problem", problem));
    }

    private void write(TakeoffLine amount) {
        write(amount.quantity());
        json.member("formula", amount.formula());
        json.member("expression", amount.expression());
        json.member("source", amount.source());
        json.array("inputs", amount.inputs(), input -> json.object(() -> {
            json.member("symbol", input.symbol());
            write(input.value());
        }));
        json.texts("elements", amount.elements());
    }

    private void write(PriceLine.Priced priced) {
        json.member("kind", priced.kind());
        write(priced.quantity());
        json.member("rate", priced.rate().amount());
        priced.asOf().map(LocalDate::toString).ifPresent(date -> json.member("asOf", date));
        json.member("source", priced.source());
        json.object("cost", () -> write(priced.cost()));
    }

    private void write(Quantity quantity) {
        json.member("quantity", quantity.value());
        json.member("unit", quantity.unitCode());
    }
}
