package org.coursewright.core.cost;

import java.util.List;
import java.util.Optional;

import org.coursewright.core.takeoff.MeasuredWall;
import org.coursewright.core.takeoff.Measurement;
import org.coursewright.core.takeoff.WallBrief.OpeningBrief;
import org.coursewright.measure.Length;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;
import org.coursewright.takeoff.Volume;

/** Plaster by area of wall faces less openings and with their reveals, half the wall deep on each side. */
final class PlasterWork {

    /** Wall finishes (ASTM E1557). */
    private static final String FINISHES = "C3010";
    private static final Formula VOLUME = new Formula("plaster.volume",
            "(face − openings + reveals) × sides × thickness × (1 + waste)", "geometry");

    private final Measurement measurement;
    private final Resources resources;

    PlasterWork(Measurement measurement, Resources resources) {
        this.measurement = measurement;
        this.resources = resources;
    }

    void add(PlasterBrief plaster) {
        measurement.walls().stream().filter(wall -> wall.brief().mark().equals(plaster.wall())).findFirst().ifPresent(
                wall -> add(plaster, wall));
    }

    private void add(PlasterBrief plaster, MeasuredWall wall) {
        Fraction openings = sum(wall, plaster, false);
        Fraction reveals = sum(wall, plaster, true);
        Fraction face = face(plaster, wall);
        Fraction area = face.minus(openings).plus(reveals).times(plaster.sides());
        if (area.signum() <= 0) {
            return;
        }
        Fraction waste = plaster.mix().map(MixBrief::waste).orElse(Fraction.ZERO);
        Volume volume = Volume.of(area.times(AlliedWork.metres(plaster.thickness())).times(Fraction.ONE.plus(waste)),
                UnitCode.CUBIC_METRE);
        List<String> elements = List.of(wall.brief().mark());
        Optional<MixBrief> mix = plaster.mix();
        if (mix.isPresent()) {
            new MixUse(mix.get(), resources).add(FINISHES, Work.PLASTER, volume, elements);
        } else {
            resources.add("plaster " + plaster.type(), FINISHES, Work.PLASTER, volume.in(UnitCode.CUBIC_METRE),
                    UnitCode.CUBIC_METRE, Trace.of(VOLUME, area("face", face), area("openings", openings), area(
                            "reveals", reveals), TraceInput.of("sides", plaster.sides()),
                            TraceInput.of("thickness",
                                    plaster.thickness()),
                            TraceInput.of("waste", waste)).from(elements));
        }
        resources.addWork(Work.PLASTER, FINISHES, wall.brief().mark(), Length.ZERO, area);
    }

    /** Of the courses, gables as they are laid; or of the strip between two edges. */
    private static Fraction face(PlasterBrief plaster, MeasuredWall wall) {
        if (plaster.from().isEmpty() && plaster.to().isEmpty()) {
            return wall.face().gross();
        }
        Length from = plaster.from().orElse(Length.ZERO);
        Length height = plaster.to().map(to -> to.minus(from)).orElseGet(() -> height(wall).minus(from));
        return AlliedWork.metres(wall.length()).times(AlliedWork.metres(height));
    }

    private static Length height(MeasuredWall wall) {
        return wall.quantities().wall().courses().stream().map(course -> course.height().plus(course.bedJoint()))
                .reduce(Length.ZERO, Length::plus);
    }

    private static Fraction sum(MeasuredWall wall, PlasterBrief plaster, boolean reveals) {
        return wall.brief().openings().stream().map(opening -> part(opening, plaster, wall, reveals)).reduce(
                Fraction.ZERO, Fraction::plus);
    }

    private static Fraction part(OpeningBrief opening, PlasterBrief plaster, MeasuredWall wall, boolean reveals) {
        Length from = plaster.from().filter(opening.sill()::isLessThan).orElse(opening.sill());
        Length head = opening.sill().plus(opening.height());
        Length to = plaster.to().filter(head::isGreaterThan).orElse(head);
        if (!to.isGreaterThan(from)) {
            return Fraction.ZERO;
        }
        if (!reveals) {
            return AlliedWork.metres(opening.width()).times(AlliedWork.metres(to.minus(from)));
        }
        Length around = to.minus(from).times(2);
        if (to.equals(head)) {
            around = around.plus(opening.width());
        }
        if (opening.sill().signum() > 0 && from.equals(opening.sill())) {
            around = around.plus(opening.width());
        }
        return AlliedWork.metres(around).times(AlliedWork.metres(wall.brief().thickness())).times(Fraction.of(1, 2));
    }

    private static TraceInput area(String symbol, Fraction squareMetres) {
        return new TraceInput(symbol, Quantity.of(squareMetres.toDecimal(), UnitCode.SQUARE_METRE));
    }
}
