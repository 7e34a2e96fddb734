package org.coursewright.takeoff.allied;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.List;
import java.util.Objects;

import org.coursewright.measure.Length;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.TraceInput;

/**
 * A face of a wall to be plastered, less its openings, with their reveals.
 *
 * @param element wall and side
 * @param length greater than zero
 * @param height greater than zero
 * @param openings in it, together smaller than the face
 */
public record PlasterFace(String element, Length length, Length height, List<Opening> openings) {

    private static final Formula AREA = new Formula("plaster.area", "length × height − openings + reveals",
            AlliedFormulas.GEOMETRY);
    private static final Formula VOLUME = new Formula("plaster.volume", "area × thickness × (1 + waste)",
            AlliedFormulas.PRACTICE);

    /**
     * An opening in a plastered face.
     *
     * @param width greater than zero
     * @param height greater than zero
     * @param reveal depth that is plastered, zero or more
     * @param sill whether the bottom is plastered too, not only the head and both sides
     */
    public record Opening(Length width, Length height, Length reveal, boolean sill) {

        public Opening {
            require(width.signum() > 0 && height.signum() > 0 && reveal.signum() >= 0,
                    "An opening of %s × %s with a reveal of %s: width and height must be above zero, the reveal not "
                            + "negative.",
                    width, height, reveal);
        }

        private Fraction hole() {
            return AlliedFormulas.area(width, height);
        }

        private Fraction reveals() {
            return AlliedFormulas.area(height.times(2).plus(width.times(sill ? 2 : 1)), reveal);
        }
    }

    public PlasterFace {
        Objects.requireNonNull(element, "element");
        openings = List.copyOf(openings);
        require(length.signum() > 0 && height.signum() > 0, "The face of %s is %s × %s: both must be above zero.",
                element, length, height);
        require(sumOfHoles(openings).compareTo(AlliedFormulas.area(length, height)) <= 0,
                "The openings of %s (%s m²) are larger than its face: correct them.", element, sumOfHoles(openings)
                        .toDecimal());
    }

    private static Fraction sumOfHoles(List<Opening> openings) {
        return openings.stream().map(Opening::hole).reduce(Fraction.ZERO, Fraction::plus);
    }

    /** @return square metres to plaster */
    public Fraction area() {
        return AlliedFormulas.area(length, height).minus(sumOfHoles(openings)).plus(reveals());
    }

    /**
     * @param thickness of all coats, greater than zero
     * @param waste share on top, zero or more
     * @return area (m²) and volume (m³) of plaster
     */
    public List<Figure> figures(Length thickness, Fraction waste) {
        require(thickness.signum() > 0 && waste.signum() >= 0, "Plaster on %s is %s thick with waste %s: the thickness "
                + "must be above zero, waste not negative.", element, thickness, waste.toDecimal());
        Fraction volume = area().times(AlliedFormulas.metres(thickness)).times(Fraction.ONE.plus(waste));
        return List.of(AlliedFormulas.figure(element, AREA, area(), UnitCode.SQUARE_METRE, TraceInput.of("length",
                length), TraceInput.of("height", height), AlliedFormulas.squareMetres("openings", sumOfHoles(openings)),
                AlliedFormulas.squareMetres("reveals", reveals())),
                AlliedFormulas.figure(element, VOLUME, volume,
                        UnitCode.CUBIC_METRE, AlliedFormulas.squareMetres("area", area()), TraceInput.of("thickness",
                                thickness),
                        TraceInput.of("waste", waste)));
    }

    private Fraction reveals() {
        return openings.stream().map(Opening::reveals).reduce(Fraction.ZERO, Fraction::plus);
    }
}
