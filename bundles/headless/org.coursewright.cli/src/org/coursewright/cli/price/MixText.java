package org.coursewright.cli.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

import org.coursewright.cli.FindingText;
import org.coursewright.cli.TextTable;
import org.coursewright.core.cost.MixSheet;
import org.coursewright.core.cost.MixSheets;
import org.coursewright.measure.LengthFormat;

/** Mixes on paper, one card after the other. */
final class MixText {

    private static final int DECIMALS = 2;

    private MixText() {
    }

    static String of(MixSheets mixes, LengthFormat format) {
        List<String> text = new ArrayList<>();
        mixes.sheets().forEach(sheet -> text.addAll(card(sheet, format)));
        text.add("Figures are estimates: try a batch, and test it, before building with it.");
        text.add("Cement and lime burn skin and eyes: wear gloves, goggles and a mask.");
        mixes.findings().forEach(finding -> text.add(FindingText.line(finding)));
        return String.join("\n", text);
    }

    private static List<String> card(MixSheet sheet, LengthFormat format) {
        List<String> text = new ArrayList<>();
        text.add("Mix %s%s".formatted(sheet.mark(), sheet.uses().isEmpty()
                ? ""
                : ": " + String.join(", ", sheet
                        .uses())));
        TextTable table = new TextTable();
        table.row("  per m³ of mix", "by volume", "by mass", "dry kg", "loose m³");
        sheet.parts().forEach(part -> table.row("  " + part.material(), number(part.byVolume()), number(part.byMass()),
                number(part.mass()), number(part.loose())));
        text.addAll(table.lines());
        text.add("  water %s L".formatted(number(sheet.perCubicMetre())));
        sheet.batch().ifPresent(batch -> text.addAll(batch(batch)));
        if (!sheet.remark().isEmpty()) {
            text.add("  No batch: " + sheet.remark());
        }
        sheet.block().ifPresent(block -> text.addAll(block(block)));
        sheet.grain().ifPresent(grain -> text.add("  Largest grain %s, thinnest joint %s: %s".formatted(format.format(
                grain.largest()), format.format(grain.joint()),
                grain.fits()
                        ? "fits."
                        : "too coarse, the joint must be at least twice the grain. Screen finer.")));
        text.add("");
        return text;
    }

    private static List<String> batch(MixSheet.Batch batch) {
        List<String> text = new ArrayList<>();
        text.add("  One batch in %s: %s L".formatted(batch.mixer(), number(batch.litres())));
        batch.lines().forEach(line -> text.add("    %s × %s %s (exactly %s, %s)".formatted(number(line.rounded()), line
                .container(), line.material(), number(line.exact()), signedPercent(line.deviation()))));
        text.add("    add %s L of water, from %s to %s".formatted(number(batch.water()), number(batch.leastWater()),
                number(batch.mostWater())));
        return text;
    }

    private static List<String> block(MixSheet.Block block) {
        return List.of("  One block %s: %s kg dry, of that %s kg stabiliser (%s of soil, %s of all), %s L loose mix"
                .formatted(block.unit(), number(block.dryMass()), number(block.stabiliser()), percent(block.ofSoil()),
                        percent(block.ofTotal()), number(block.loose())),
                "    water %s L, from %s to %s%s".formatted(number(block.water()), number(block.leastWater()), number(
                        block.mostWater()),
                        block.fromPack().map(pack -> "; a pack of binder makes " + number(pack)
                                + " blocks").orElse("")));
    }

    private static String signedPercent(BigDecimal share) {
        return (share.signum() < 0 ? "" : "+") + percent(share);
    }

    private static String percent(BigDecimal share) {
        return share.movePointRight(2).setScale(1, RoundingMode.HALF_UP).toPlainString() + " %";
    }

    private static String number(BigDecimal value) {
        return value.setScale(DECIMALS, RoundingMode.HALF_UP).toPlainString();
    }
}
