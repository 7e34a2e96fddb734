package org.coursewright.core.takeoff;

import java.util.List;
import java.util.stream.Stream;

import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Length;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;

/**
 * Area of one face of a wall, over the courses laid and from outer face to outer face; lintels and beams count.
 *
 * @param mark the wall's mark
 * @param gross in square metres, openings counted
 * @param openings in square metres
 */
public record WallFaceArea(String mark, Fraction gross, Fraction openings) {

    private static final Formula NET = new Formula("face.net",
            "gross − openings; gross is Σ (length at bottom + length at top) ÷ 2 × height over all courses",
            "geometry");
    private static final Fraction SQUARE_METRE = Fraction.of(1000 * Length.UNITS_PER_MILLIMETRE)
            .times(1000 * Length.UNITS_PER_MILLIMETRE);

    static WallFaceArea of(WallLayout layout, WallBrief brief) {
        return new WallFaceArea(layout.mark(),
                sum(layout.courses().stream().map(CourseLayout::course).map(course -> area(
                        course.to().minus(course.from()).plus(course.topTo().minus(course.topFrom())),
                        course.height()).times(Fraction.of(1, 2)))),
                sum(brief.openings().stream().map(opening -> area(opening.width(), opening.height()))));
    }

    static TakeoffLine total(List<WallFaceArea> walls) {
        return line("wall faces, one side", sum(walls.stream().map(WallFaceArea::gross)),
                sum(walls.stream().map(WallFaceArea::openings)), walls.stream().map(WallFaceArea::mark).toList());
    }

    /** @return gross less openings, in square metres */
    public Fraction net() {
        return gross.minus(openings);
    }

    TakeoffLine line() {
        return line("wall face " + mark + ", one side", gross, openings, List.of(mark));
    }

    private static TakeoffLine line(String item, Fraction gross, Fraction openings, List<String> elements) {
        return TakeoffLines.of(item, quantity(gross.minus(openings)), new Trace(NET, List.of(new TraceInput("gross",
                quantity(gross)), new TraceInput("openings", quantity(openings))), elements));
    }

    private static Quantity quantity(Fraction area) {
        return Quantity.of(area.toDecimal(), UnitCode.SQUARE_METRE);
    }

    private static Fraction area(Length first, Length second) {
        return Fraction.of(first.units()).times(second.units()).dividedBy(SQUARE_METRE);
    }

    private static Fraction sum(Stream<Fraction> areas) {
        return areas.reduce(Fraction.ZERO, Fraction::plus);
    }
}
