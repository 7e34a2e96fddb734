package org.coursewright.exchange.estimate;

import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.LengthRange;
import org.coursewright.exchange.table.NumberCell;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Finish;
import org.coursewright.model.building.WallSide;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.FinishType;

/** Plasters, and the walls that they cover. */
final class FinishTable extends MarkedTable<FinishType> {

    private final Book book;

    FinishTable(Book book) {
        super(Column.mandatory("thickness"), Column.mandatory("walls"), Column
                .optional("side"), Column.optional("mix"), Column.optional("coats"));
        this.book = book;
    }

    @Override
    FinishType create() {
        return CatalogueFactory.eINSTANCE.createFinishType();
    }

    @Override
    void fill(Cells cells, FinishType type) {
        type.setThickness(cells.length("thickness", LengthRange.WIDTH));
        book.mixes().named(cells, "mix").ifPresent(type::setMix);
        NumberCell.whole(cells, "coats", 1, 20).ifPresent(type::setCoats);
        WallSide side = cells.word("side", WallSide.values(), WallSide::getLiteral).orElse(WallSide.BOTH);
        BeamTable.words(cells.text("walls")).forEach(mark -> book.walls().find(cells, "walls", mark).ifPresent(wall -> {
            Finish finish = BuildingFactory.eINSTANCE.createFinish();
            finish.setType(type);
            finish.setSide(side);
            wall.getFinishes().add(finish);
        }));
    }
}
