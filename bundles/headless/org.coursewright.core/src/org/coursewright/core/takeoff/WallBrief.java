package org.coursewright.core.takeoff;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.coursewright.measure.Length;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.takeoff.quantities.UnitShape;

/**
 * What the take-off needs of a wall besides its layout, copied out of the project.
 *
 * @param mark the wall's mark
 * @param unit what it is laid of
 * @param bond {@code stretcher} or {@code header}
 * @param thickness the unit's width in stretcher bond, its length in header bond
 * @param openings in it
 */
record WallBrief(String mark, UnitShape unit, String bond, Length thickness, List<OpeningBrief> openings) {

    /**
     * An opening.
     *
     * @param element such as {@code W1/D1}
     * @param width between its jambs
     * @param height from sill to head
     * @param lintel over it, if it has one
     */
    record OpeningBrief(String element, Length width, Length height, Optional<LintelBrief> lintel) {
    }

    /**
     * A lintel.
     *
     * @param type mark of its type
     * @param bearing on each side
     */
    record LintelBrief(String type, Length bearing) {
    }

    /** Reads a wall whose unit type has its three dimensions. */
    static WallBrief of(Wall wall) {
        boolean header = wall.getBond() == Bond.HEADER;
        UnitShape unit = shape(wall.getUnitType());
        return new WallBrief(wall.getMark(), unit, wall.getBond().getLiteral().toLowerCase(Locale.ROOT),
                header ? unit.length() : unit.width(),
                wall.getOpenings().stream().map(opening -> of(opening, wall)).toList());
    }

    /** A type without a mark is called by its size. */
    private static UnitShape shape(UnitType type) {
        String name = Optional.ofNullable(type.getMark()).filter(mark -> !mark.isBlank()).orElseGet(
                () -> "unit %s x %s x %s".formatted(type.getLength(), type.getWidth(), type.getHeight()));
        return new UnitShape(name, type.getLength(), type.getWidth(), type.getHeight());
    }

    private static OpeningBrief of(Opening opening, Wall wall) {
        return new OpeningBrief(wall.getMark() + "/" + opening.getMark(), opening.getWidth(), opening.getHeight(),
                Optional.ofNullable(opening.getLintelType()).map(type -> new LintelBrief(String.valueOf(type.getMark()),
                        Optional.ofNullable(type.getBearing()).orElse(Length.ZERO))));
    }
}
