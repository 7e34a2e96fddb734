package org.coursewright.exchange.estimate;

import java.util.List;

import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.NumberCell;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.Plant;
import org.coursewright.model.catalogue.PlantKind;

/** Machines. */
final class PlantTable extends Schedule<Made<Plant>> {

    private final Book book;

    PlantTable(Book book) {
        super(List.of(Column.mandatory("mark"), Column.mandatory("kind"), Column.optional("output"),
                Column.optional("lost"), Column.optional("capacity")));
        this.book = book;
    }

    @Override
    protected Made<Plant> row(Cells cells) {
        Plant plant = CatalogueFactory.eINSTANCE.createPlant();
        plant.setMark(cells.mark("mark"));
        cells.word("kind", PlantKind.values(), PlantKind::getLiteral).ifPresent(plant::setKind);
        NumberCell.quantity(cells, "output").ifPresent(plant::setOutput);
        NumberCell.share(cells, "lost").ifPresent(plant::setLostShare);
        NumberCell.quantity(cells, "capacity").ifPresent(plant::setCapacity);
        book.plant().add(plant);
        return new Made<>(cells.line(), plant.getMark(), plant);
    }
}
