package org.coursewright.exchange.schedule;

import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.UnitType;

/** Turns unit rows into unit types of the model. */
final class UnitTypes {

    private UnitTypes() {
    }

    static UnitType of(UnitRow row) {
        UnitType type = CatalogueFactory.eINSTANCE.createUnitType();
        type.setMark(row.mark());
        type.setLength(row.length());
        type.setWidth(row.width());
        type.setHeight(row.height());
        row.mass().ifPresent(type::setMass);
        type.getSpecialLengths().addAll(row.specialLengths());
        row.shortestPiece().ifPresent(type::setShortestPiece);
        row.cutStep().ifPresent(type::setCutStep);
        row.kerf().ifPresent(type::setKerf);
        if (!row.note().isEmpty()) {
            type.setNote(row.note());
        }
        return type;
    }
}
