package org.coursewright.exchange.estimate;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;

import org.coursewright.exchange.remark.Shown;
import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.LengthRange;
import org.coursewright.exchange.table.NumberCell;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.model.catalogue.UnitSource;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.estimate.Estimate;
import org.coursewright.model.project.Project;

/** Single decisions: a setting, and of what where it is of something, such as {@code breakage B14}. */
final class SettingTable extends Schedule<Made<String>> {

    private static final Map<String, BiConsumer<Estimate, BigDecimal>> SHARES = Map.of(
            "material_tax", Estimate::setMaterialTaxShare, "labour_tax", Estimate::setLabourTaxShare,
            "plant_tax", Estimate::setPlantTaxShare, "haulage_tax", Estimate::setHaulageTaxShare,
            "overhead", Estimate::setOverheadShare, "contingency", Estimate::setContingencyShare,
            "bed_fill", Estimate::setBedFillShare, "head_fill", Estimate::setHeadFillShare);

    private static final String VALUE = "value";

    private final Book book;
    private final Project project;

    SettingTable(Book book, Project project) {
        super(List.of(Column.mandatory("setting"), Column.mandatory(VALUE)));
        this.book = book;
        this.project = project;
    }

    @Override
    protected String markColumn() {
        return "setting";
    }

    @Override
    protected Made<String> row(Cells cells) {
        String setting = cells.mark("setting");
        if (cells.text(VALUE).isEmpty()) {
            cells.wrong(VALUE, "The cell is empty. Enter a value or take the row out.");
        } else {
            int blank = setting.indexOf(' ');
            if (blank < 0) {
                ofProject(cells, setting);
            } else {
                of(cells, setting.substring(0, blank), setting.substring(blank + 1).strip());
            }
        }
        return new Made<>(cells.line(), setting, cells.text(VALUE));
    }

    private void ofProject(Cells cells, String setting) {
        Estimate estimate = book.estimate();
        if (SHARES.containsKey(setting)) {
            NumberCell.share(cells, VALUE).ifPresent(share -> SHARES.get(setting).accept(estimate, share));
            return;
        }
        switch (setting) {
            case "currency" -> currency(cells);
            case "mortar" -> book.mixes().named(cells, VALUE).ifPresent(estimate::setMortar);
            case "first_mortar" -> book.mixes().named(cells, VALUE).ifPresent(estimate::setFirstMortar);
            case "sealer" -> book.coatings().named(cells, VALUE).ifPresent(estimate::setSealer);
            case "scaffold_reach" -> estimate.setScaffoldReach(cells.length(VALUE, LengthRange.WIDTH));
            case "scaffold_lift" -> estimate.setScaffoldLift(cells.length(VALUE, LengthRange.WIDTH));
            case "tie_courses" -> NumberCell.whole(cells, VALUE, 0, 100).ifPresent(estimate::setTieCourses);
            case "ties_per_joint" -> NumberCell.whole(cells, VALUE, 1, 100).ifPresent(estimate::setTiesPerJoint);
            default -> unknown(cells, setting);
        }
    }

    private void of(Cells cells, String setting, String subject) {
        switch (setting) {
            case "correlation" -> NumberCell.share(cells, VALUE).ifPresent(book.uncertainty(subject)::setCorrelation);
            case "breakage" -> unit(cells, subject, NumberCell::share, UnitType::setBreakageShare);
            case "mix" -> unit(cells, subject, book.mixes()::named, UnitType::setMix);
            case "source" -> unit(cells, subject, (from, column) -> from.word(column, UnitSource.values(),
                    UnitSource::getLiteral), UnitType::setSource);
            case "element" -> BeamTable.words(subject).forEach(mark -> book.walls().find(cells, "setting", mark)
                    .ifPresent(wall -> wall.setElement(cells.mark(VALUE))));
            default -> unknown(cells, setting);
        }
    }

    private <V> void unit(Cells cells, String mark, BiFunction<Cells, String, Optional<V>> reader,
            BiConsumer<UnitType, V> setter) {
        book.units().find(cells, "setting", mark).ifPresent(unit -> reader.apply(cells, VALUE).ifPresent(
                value -> setter.accept(unit, value)));
    }

    private void currency(Cells cells) {
        String code = cells.text(VALUE);
        boolean known = Currency.getAvailableCurrencies().stream().map(Currency::getCurrencyCode)
                .anyMatch(code::equals);
        if (known) {
            project.setCurrency(code);
        } else {
            cells.wrong(VALUE, "%s is no ISO 4217 code: enter one such as USD.".formatted(Shown.quoted(code)));
        }
    }

    private static void unknown(Cells cells, String setting) {
        cells.wrong("setting", "%s is no setting. Settings are currency, mortar, first_mortar, sealer, scaffold_reach, "
                .formatted(Shown.quoted(setting))
                + "scaffold_lift, tie_courses, ties_per_joint, bed_fill, head_fill, material_tax, labour_tax, plant_tax, "
                + "haulage_tax, overhead, contingency, and correlation, breakage, mix, source or element of something.");
    }
}
