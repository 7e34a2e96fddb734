package org.coursewright.exchange.estimate;

import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.NumberCell;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.MixBasis;
import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.catalogue.MixPart;

/** Mixes of mortar, plaster, concrete and blocks. */
final class MixTable extends MarkedTable<MixDesign> {

    private final Book book;

    MixTable(Book book) {
        super(Column.mandatory("parts"), Column.optional("basis"),
                Column.optional("yield"), Column.optional("water"), Column.optional("least_water"),
                Column.optional("most_water"), Column.optional("air"), Column.optional("waste"),
                Column.optional("dry_density"), Column.optional("loose"), Column.optional("spoiled"),
                Column.optional("stabiliser"), Column.optional("note"));
        this.book = book;
    }

    @Override
    MixDesign create() {
        return CatalogueFactory.eINSTANCE.createMixDesign();
    }

    @Override
    void fill(Cells cells, MixDesign mix) {
        cells.word("basis", MixBasis.values(), MixBasis::getLiteral).ifPresent(mix::setBasis);
        NumberCell.positive(cells, "yield").ifPresent(mix::setYieldShare);
        NumberCell.share(cells, "water").ifPresent(mix::setWaterShare);
        NumberCell.share(cells, "least_water").ifPresent(mix::setLeastWaterShare);
        NumberCell.share(cells, "most_water").ifPresent(mix::setMostWaterShare);
        NumberCell.share(cells, "air").ifPresent(mix::setAirShare);
        NumberCell.share(cells, "waste").ifPresent(mix::setWasteShare);
        NumberCell.positive(cells, "dry_density").ifPresent(mix::setDryDensity);
        NumberCell.positive(cells, "loose").ifPresent(mix::setLooseShare);
        NumberCell.share(cells, "spoiled").ifPresent(mix::setSpoiledShare);
        NumberCell.share(cells, "stabiliser").ifPresent(mix::setStabiliserShare);
        if (!cells.text("note").isEmpty()) {
            mix.setNote(cells.text("note"));
        }
        addParts(cells, mix);
        book.mixes().add(mix);
    }

    private void addParts(Cells cells, MixDesign mix) {
        for (Parts part : Parts.of(cells, "parts")) {
            book.materials().find(cells, "parts", part.name()).ifPresent(material -> {
                MixPart made = CatalogueFactory.eINSTANCE.createMixPart();
                made.setMaterial(material);
                made.setParts(part.number());
                mix.getParts().add(made);
            });
        }
        if (cells.areSound() && mix.getParts().isEmpty()) {
            cells.wrong("parts", "The cell is empty. Enter materials with their parts, such as cement 1 | sand 4.");
        }
    }
}
