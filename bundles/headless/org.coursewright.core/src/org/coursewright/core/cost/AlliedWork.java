package org.coursewright.core.cost;

import java.util.List;
import java.util.Optional;

import org.coursewright.core.takeoff.MeasuredWall;
import org.coursewright.core.takeoff.Measurement;
import org.coursewright.core.takeoff.WallBrief.LintelBrief;
import org.coursewright.core.takeoff.WallBrief.OpeningBrief;
import org.coursewright.measure.Length;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;
import org.coursewright.takeoff.Volume;
import org.coursewright.takeoff.allied.Coating;

/** Lintels, beams with their steel, sealer and plaster. */
final class AlliedWork {

    private static final Formula LINTEL = new Formula("lintel.volume", "(width + 2 × bearing) × height × thickness",
            "geometry");
    private static final Formula LINTEL_LENGTH = new Formula("lintel.length", "width + 2 × bearing", "geometry");
    private static final Formula CONCRETE = new Formula("beam.concrete", "length × width × height × (1 + waste)",
            "geometry");
    private static final Formula STEEL = new Formula("beam.steel", "lines × steel × massPerMetre",
            "ASTM A615 or EN 10080 (mass, from memory)");
    private static final Fraction METRE = Fraction.of(1000 * Length.UNITS_PER_MILLIMETRE);

    private final Measurement measurement;
    private final CostBrief brief;
    private final Resources resources;

    AlliedWork(Measurement measurement, CostBrief brief, Resources resources) {
        this.measurement = measurement;
        this.brief = brief;
        this.resources = resources;
    }

    void add() {
        for (MeasuredWall wall : measurement.walls()) {
            wall.brief().openings().forEach(opening -> opening.lintel().ifPresent(lintel -> lintel(wall, opening,
                    lintel)));
        }
        brief.beams().forEach(this::beam);
        PlasterWork plaster = new PlasterWork(measurement, resources);
        brief.plaster().forEach(plaster::add);
    }

    /** By volume where the section is known, else by length. */
    private void lintel(MeasuredWall wall, OpeningBrief opening, LintelBrief lintel) {
        String resource = lintel.material().orElse("lintel");
        Length length = opening.width().plus(lintel.bearing().times(2));
        TraceInput width = TraceInput.of("width", opening.width());
        TraceInput bearing = TraceInput.of("bearing", lintel.bearing());
        if (lintel.height().isPresent()) {
            Length thickness = lintel.width().orElse(wall.brief().thickness());
            resources.add(resource, wall.brief().element(), Work.SET_LINTEL, Volume.of(length, lintel.height().get(),
                    thickness).in(UnitCode.CUBIC_METRE), UnitCode.CUBIC_METRE,
                    Trace.of(LINTEL, width, bearing,
                            TraceInput.of("height", lintel.height().get()), TraceInput.of("thickness", thickness)).from(
                                    List.of(opening.element())));
        } else {
            resources.add(resource, wall.brief().element(), Work.SET_LINTEL, metres(length), UnitCode.METRE, Trace.of(
                    LINTEL_LENGTH, width, bearing).from(List.of(opening.element())));
        }
        resources.addWork(Work.SET_LINTEL, wall.brief().element(), opening.element(), opening.sill().plus(opening
                .height()), Fraction.ONE);
    }

    private void beam(BeamBrief beam) {
        Volume net = Volume.of(beam.length(), beam.width(), beam.height());
        Fraction waste = beam.mix().map(MixBrief::waste).orElse(Fraction.ZERO);
        Volume volume = net.times(Fraction.ONE.plus(waste));
        Optional<MixBrief> mix = beam.mix();
        if (mix.isPresent()) {
            new MixUse(mix.get(), resources).add(beam.element(), Work.CAST_BEAM, volume, List.of(beam.mark()));
        } else {
            resources.add("concrete", beam.element(), Work.CAST_BEAM, volume.in(UnitCode.CUBIC_METRE),
                    UnitCode.CUBIC_METRE, Trace.of(CONCRETE, TraceInput.of("length", beam.length()), TraceInput.of(
                            "width", beam.width()), TraceInput.of("height", beam.height()),
                            TraceInput.of("waste",
                                    waste))
                            .from(List.of(beam.mark())));
        }
        resources.addWork(Work.CAST_BEAM, beam.element(), beam.mark(), Length.ZERO, net.in(UnitCode.CUBIC_METRE));
        steel(beam);
        brief.site().sealer().filter(each -> beam.sealed()).ifPresent(sealer -> seal(beam, sealer));
    }

    private void steel(BeamBrief beam) {
        beam.bars().filter(each -> beam.lines() > 0).ifPresent(bars -> resources.add("bar " + bars.bar().designation(),
                beam.element(), Work.CAST_BEAM, metres(bars.steel()).times(bars.bar().massPerMetre()).times(beam
                        .lines()),
                UnitCode.KILOGRAM, Trace.of(STEEL, TraceInput.of("lines", beam.lines()), TraceInput.of("steel", bars
                        .steel()), TraceInput.of("massPerMetre", bars.bar().massPerMetre())).from(List.of(beam
                                .mark()))));
    }

    /** Top and both sides. */
    private void seal(BeamBrief beam, Coating sealer) {
        Fraction area = metres(beam.length()).times(metres(beam.width().plus(beam.height().times(2))));
        Figure figure = sealer.figure(sealer.name(), area);
        resources.add(sealer.name(), beam.element(), Work.SEAL, figure.quantity(), figure.trace().from(List.of(beam
                .mark())));
        resources.addWork(Work.SEAL, beam.element(), beam.mark(), Length.ZERO, area);
    }

    static Fraction metres(Length length) {
        return Fraction.of(length.units()).dividedBy(METRE);
    }
}
