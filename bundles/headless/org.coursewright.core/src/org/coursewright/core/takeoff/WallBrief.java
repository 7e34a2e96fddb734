package org.coursewright.core.takeoff;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.coursewright.measure.Length;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.LintelType;
import org.coursewright.model.catalogue.Material;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.quantities.UnitShape;

/**
 * What the take-off needs of a wall besides its layout, copied out of the project.
 *
 * @param mark the wall's mark
 * @param unit what it is laid of
 * @param bond {@code stretcher} or {@code header}
 * @param thickness the unit's width in stretcher bond, its length in header bond
 * @param breakage of its units, ordered on top
 * @param element ASTM E1557 code of the element it belongs to
 * @param openings in it
 */
public record WallBrief(String mark, UnitShape unit, String bond, Length thickness, Fraction breakage, String element,
        List<OpeningBrief> openings) {

    /** Exterior walls (ASTM E1557), where a wall names no element. */
    public static final String USUAL_ELEMENT = "B2010";

    public WallBrief {
        openings = List.copyOf(openings);
    }

    /**
     * An opening.
     *
     * @param element such as {@code W1/D1}
     * @param width between its jambs
     * @param sill above the wall's base
     * @param height from sill to head
     * @param lintel over it, if it has one
     */
    public record OpeningBrief(String element, Length width, Length sill, Length height,
            Optional<LintelBrief> lintel) {
    }

    /**
     * A lintel.
     *
     * @param type mark of its type
     * @param bearing on each side
     * @param height of its section, if known
     * @param width of its section, or empty for the wall's thickness
     * @param material mark of what it is made of, if chosen
     */
    public record LintelBrief(String type, Length bearing, Optional<Length> height, Optional<Length> width,
            Optional<String> material) {
    }

    /** Reads a wall whose unit type has its three dimensions. */
    static WallBrief of(Wall wall, Fraction breakage) {
        boolean header = wall.getBond() == Bond.HEADER;
        UnitShape unit = shape(wall.getUnitType());
        return new WallBrief(wall.getMark(), unit, wall.getBond().getLiteral().toLowerCase(Locale.ROOT),
                header ? unit.length() : unit.width(), breakage,
                Optional.ofNullable(wall.getElement()).filter(code -> !code.isBlank()).orElse(USUAL_ELEMENT),
                wall.getOpenings().stream().map(opening -> of(opening, wall)).toList());
    }

    /** A type without a mark is called by its size. */
    private static UnitShape shape(UnitType type) {
        String name = Optional.ofNullable(type.getMark()).filter(mark -> !mark.isBlank()).orElseGet(
                () -> "unit %s x %s x %s".formatted(type.getLength(), type.getWidth(), type.getHeight()));
        return new UnitShape(name, type.getLength(), type.getWidth(), type.getHeight());
    }

    private static OpeningBrief of(Opening opening, Wall wall) {
        return new OpeningBrief(wall.getMark() + "/" + opening.getMark(), opening.getWidth(), opening.getSill(),
                opening.getHeight(), Optional.ofNullable(opening.getLintelType()).map(WallBrief::of));
    }

    private static LintelBrief of(LintelType type) {
        return new LintelBrief(String.valueOf(type.getMark()),
                Optional.ofNullable(type.getBearing()).orElse(Length.ZERO), Optional.ofNullable(type.getHeight()),
                Optional.ofNullable(type.getWidth()),
                Optional.ofNullable(type.getMaterial()).map(Material::getMark));
    }
}
