package org.coursewright.core.bond;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.PieceStock;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;

/**
 * What a wall is made of, seen from its face: how thick it is, what one unit shows, how high a course is.
 *
 * @param thickness across the wall
 * @param unitHeight of the unit as laid
 * @param courseHeight bed joint aimed at and unit together
 * @param stock the pieces along the wall
 * @param rule the rule it is laid by
 */
record WallBody(Length thickness, Length unitHeight, Length courseHeight, PieceStock stock, LayingRule rule) {

    /** Shortest piece worth cutting: a quarter of the unit, but 3 in or 75 mm at least (common practice, no source). */
    private static final Length LEAST_PIECE_INCHES = Length.ofInches(3);
    private static final Length LEAST_PIECE_MILLIMETRES = Length.ofMillimetres(75);

    /** Reads the body of a wall that has a unit type with three dimensions. */
    static WallBody of(Wall wall, Project project) {
        UnitType unit = wall.getUnitType();
        boolean header = wall.getBond() == Bond.HEADER;
        Length face = header ? unit.getWidth() : unit.getLength();
        LayingRule rule = LayingRule.of(wall, project, face);
        List<Length> specials = header ? List.of() : specials(unit, face);
        boolean inches = project.getDisplayUnit() != DisplayUnit.MILLIMETRE;
        Length step = Optional.ofNullable(unit.getCutStep())
                .orElse(inches ? Length.ofInchFraction(1, 4) : Length.ofMillimetres(5));
        Length kerf = Optional.ofNullable(unit.getKerf())
                .orElse(inches ? Length.ofInchFraction(3, 16) : Length.ofMillimetres(5));
        Length shortest = Optional.ofNullable(unit.getShortestPiece()).or(rule::shortestPiece)
                .orElseGet(() -> usualShortest(face, inches));
        return new WallBody(header ? unit.getLength() : unit.getWidth(), unit.getHeight(),
                unit.getHeight().plus(rule.bedNominal()), new PieceStock(face, specials, shortest, step, kerf), rule);
    }

    /** A special is pressed along the unit's length, so it shows its length in stretcher bond only. */
    private static List<Length> specials(UnitType unit, Length face) {
        return unit.getSpecialLengths().stream().filter(length -> length != null && length.isLessThan(face)).distinct()
                .sorted().toList();
    }

    private static Length usualShortest(Length face, boolean inches) {
        Length quarter = Length.ofUnits((face.units() + 3) / 4);
        Length least = inches ? LEAST_PIECE_INCHES : LEAST_PIECE_MILLIMETRES;
        Length wanted = quarter.isLessThan(least) ? least : quarter;
        return face.isLessThan(wanted) ? face : wanted;
    }
}
