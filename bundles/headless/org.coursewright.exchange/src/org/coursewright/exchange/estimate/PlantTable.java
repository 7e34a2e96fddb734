package org.coursewright.exchange.estimate;

import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.NumberCell;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.Plant;
import org.coursewright.model.catalogue.PlantKind;

/** Machines. */
final class PlantTable extends MarkedTable<Plant> {

    private final Book book;

    PlantTable(Book book) {
        super(Column.mandatory("kind"), Column.optional("output"),
                Column.optional("lost"), Column.optional("capacity"));
        this.book = book;
    }

    @Override
    Plant create() {
        return CatalogueFactory.eINSTANCE.createPlant();
    }

    @Override
    void fill(Cells cells, Plant plant) {
        cells.word("kind", PlantKind.values(), PlantKind::getLiteral).ifPresent(plant::setKind);
        NumberCell.quantity(cells, "output").ifPresent(plant::setOutput);
        NumberCell.share(cells, "lost").ifPresent(plant::setLostShare);
        NumberCell.quantity(cells, "capacity").ifPresent(plant::setCapacity);
        book.plant().add(plant);
    }
}
