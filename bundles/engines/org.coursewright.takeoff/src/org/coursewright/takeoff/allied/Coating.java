package org.coursewright.takeoff.allied;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Objects;

import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.TraceInput;

/**
 * Something liquid that is put on a surface, such as a sealer on a grade beam.
 *
 * @param name of the material
 * @param coverage square metres that a litre covers in one coat, greater than zero
 * @param coats at least 1
 * @param waste share on top, zero or more
 */
public record Coating(String name, Fraction coverage, int coats, Fraction waste) {

    private static final Formula LITRES = new Formula("coating.litres", "area × coats ÷ coverage × (1 + waste)",
            AlliedFormulas.PRACTICE);

    public Coating {
        Objects.requireNonNull(name, "name");
        require(coverage.signum() > 0, "A litre of %s covers %s m²: give more than zero.", name, coverage.toDecimal());
        require(coats >= 1 && waste.signum() >= 0, "%s has %d coats and waste %s: give at least one coat, waste not "
                + "negative.", name, coats, waste.toDecimal());
    }

    /**
     * @param element that is coated
     * @param area m², zero or more
     * @return litres
     */
    public Figure figure(String element, Fraction area) {
        require(area.signum() >= 0, "%s has an area of %s m² to coat: it must not be negative.", element, area
                .toDecimal());
        Fraction litres = area.times(coats).dividedBy(coverage).times(Fraction.ONE.plus(waste));
        return AlliedFormulas.figure(element, LITRES, litres, UnitCode.LITRE, AlliedFormulas.squareMetres("area", area),
                TraceInput.of("coats", coats), TraceInput.of("coverage", coverage), TraceInput.of("waste", waste));
    }
}
