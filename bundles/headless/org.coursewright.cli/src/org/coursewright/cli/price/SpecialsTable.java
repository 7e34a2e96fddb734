package org.coursewright.cli.price;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.cli.TextTable;
import org.coursewright.core.cost.MakeOrCutLine;
import org.coursewright.measure.LengthFormat;

/**
 * Whether to have specials or to cut.
 *
 * @param lines the comparisons
 * @param lengths how lengths are written
 */
record SpecialsTable(List<MakeOrCutLine> lines, LengthFormat lengths) {

    List<String> text() {
        if (lines.isEmpty()) {
            return List.of();
        }
        List<String> text = new ArrayList<>(List.of(""));
        TextTable table = new TextTable();
        table.row("special or cut, direct cost", "pieces", "units saved", "cutting", "having", "pays from", "now");
        lines.forEach(
                line -> table.row("%s %s %s".formatted(line.unit(), line.bond(), lengths.formatExact(line.length())),
                        line.pieces(), line.unitsSaved(), Figures.money(line.cutting()), Figures.money(line.making()),
                        line.breakEven().isPresent() ? line.breakEven().getAsLong() : "never", advice(line)));
        text.addAll(table.lines());
        return text;
    }

    private static String advice(MakeOrCutLine line) {
        String now = line.stocked() ? "special" : "cut";
        return now.equals(line.makingPays() ? "special" : "cut") ? now + ", keep" : now + ", change";
    }
}
