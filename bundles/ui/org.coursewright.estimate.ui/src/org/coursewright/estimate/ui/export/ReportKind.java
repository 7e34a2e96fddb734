package org.coursewright.estimate.ui.export;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;

import org.coursewright.core.cost.PriceComparison;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.core.cost.QuantityTable;
import org.coursewright.exchange.report.PriceReport;
import org.coursewright.exchange.report.Report;
import org.coursewright.exchange.report.TakeoffTables;

/** The parts of an estimate that can be written. */
enum ReportKind {

    /** What the building takes. */
    TAKEOFF(ExportText.takeoff, (name, source) -> {
        QuantityTable table = source.of(PriceResults.QUANTITIES);
        return TakeoffTables.of(name, table.takeoff(), table.resources().lines());
    }),
    /** What it costs. */
    PRICE(ExportText.price, (name, source) -> {
        PriceOutcome price = source.of(PriceResults.RANGE);
        return PriceReport.of(name, List.of(price));
    }),
    /** What it would cost otherwise. */
    SCENARIOS(ExportText.scenarios, (name, source) -> {
        PriceComparison comparison = source.of(PriceResults.COMPARISON);
        return PriceReport.of(name, comparison.prices());
    });

    private final String title;
    private final BiFunction<String, ResultSource, Report> report;

    ReportKind(String title, BiFunction<String, ResultSource, Report> report) {
        this.title = title;
        this.report = report;
    }

    /** @return the kind that a command's parameter names */
    static ReportKind of(String key) {
        return Arrays.stream(values()).filter(kind -> kind.key().equals(key)).findFirst().orElseThrow(
                () -> new IllegalArgumentException("No part \"%s\" of an estimate can be written.".formatted(key)));
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    String title() {
        return title;
    }

    /** @return the report on a project of that name */
    Report report(String project, ResultSource source) {
        return report.apply(project, source);
    }
}
