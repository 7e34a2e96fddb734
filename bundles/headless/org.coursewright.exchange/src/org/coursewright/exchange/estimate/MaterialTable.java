package org.coursewright.exchange.estimate;

import java.util.List;

import org.coursewright.exchange.remark.Shown;
import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.LengthRange;
import org.coursewright.exchange.table.NumberCell;
import org.coursewright.measure.UnitCode;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.CoatingType;
import org.coursewright.model.catalogue.Material;

/** Materials; one with a coverage is a coating too. */
final class MaterialTable extends MarkedTable<Material> {

    private final Book book;

    MaterialTable(Book book) {
        super(Column.mandatory("unit"), Column.optional("name"),
                Column.optional("density"), Column.optional("compacted"), Column.optional("particle"),
                Column.optional("moisture"), Column.optional("absorbed"), Column.optional("bulking"),
                Column.optional("binder"), Column.optional("largest_particle"), Column.optional("pack"),
                Column.optional("waste"), Column.optional("dug_on_site"), Column.optional("coverage"),
                Column.optional("coats"));
        this.book = book;
    }

    @Override
    Material create() {
        return CatalogueFactory.eINSTANCE.createMaterial();
    }

    @Override
    void fill(Cells cells, Material material) {
        material.setUnitCode(unit(cells, "unit"));
        if (!cells.text("name").isEmpty()) {
            material.setName(cells.mark("name"));
        }
        NumberCell.positive(cells, "density").ifPresent(material::setDensity);
        NumberCell.positive(cells, "compacted").ifPresent(material::setCompactedDensity);
        NumberCell.positive(cells, "particle").ifPresent(material::setParticleDensity);
        NumberCell.share(cells, "moisture").ifPresent(material::setMoistureShare);
        NumberCell.share(cells, "absorbed").ifPresent(material::setAbsorbedShare);
        NumberCell.share(cells, "bulking").ifPresent(material::setBulkingShare);
        NumberCell.share(cells, "waste").ifPresent(material::setWasteShare);
        NumberCell.quantity(cells, "pack").ifPresent(material::setPack);
        cells.optionalLength("largest_particle", LengthRange.KERF).ifPresent(material::setLargestParticle);
        material.setBinder(yes(cells, "binder"));
        material.setDugOnSite(yes(cells, "dug_on_site"));
        coat(cells, material);
    }

    /** @return a unit code that is known, as written otherwise */
    static String unit(Cells cells, String column) {
        String code = cells.text(column);
        if (UnitCode.find(code).isEmpty()) {
            cells.wrong(column, "%s is no unit code that is known. Enter a UN/ECE code such as KGM, MTQ, BG or H87."
                    .formatted(Shown.quoted(code)));
        }
        return code;
    }

    private static boolean yes(Cells cells, String column) {
        String text = cells.text(column);
        if (!List.of("", "yes", "no").contains(text)) {
            cells.wrong(column, "%s cannot be used: enter yes or no.".formatted(Shown.quoted(text)));
        }
        return text.equals("yes");
    }

    private void coat(Cells cells, Material material) {
        NumberCell.positive(cells, "coverage").ifPresent(coverage -> {
            CoatingType coating = CatalogueFactory.eINSTANCE.createCoatingType();
            coating.setMark(material.getMark());
            coating.setMaterial(material);
            coating.setCoverage(coverage);
            NumberCell.whole(cells, "coats", 1, 20).ifPresent(coating::setCoats);
            book.coatings().add(coating);
        });
        book.materials().add(material);
    }
}
