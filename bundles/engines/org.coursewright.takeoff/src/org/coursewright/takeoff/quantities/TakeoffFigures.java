package org.coursewright.takeoff.quantities;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.coursewright.measure.Length;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;
import org.coursewright.takeoff.Volume;

/** The lines of a take-off with how each came about. */
public final class TakeoffFigures {

    private TakeoffFigures() {
    }

    /**
     * @param quantities of a building
     * @return lines for the units of each type and for each mortar, in the order of the orders
     */
    public static List<Figure> of(BuildingQuantities quantities) {
        List<Figure> figures = new ArrayList<>();
        quantities.units().forEach(order -> addUnits(order, figures));
        quantities.mortars().forEach(order -> addMortar(order, figures));
        return List.copyOf(figures);
    }

    private static void addUnits(UnitOrder order, List<Figure> figures) {
        String type = order.unit().type();
        PieceTally pieces = order.pieces();
        figures.add(count(type, pieces.whole(), Trace.of(TakeoffFormulas.WHOLE).from(order.walls(
                wall -> wall.pieces().whole() > 0))));
        for (Map.Entry<Length, Long> special : order.orderedSpecials().entrySet()) {
            figures.add(count(type + " " + special.getKey(), special.getValue(), Trace.of(TakeoffFormulas.SPECIALS,
                    TraceInput.of("pieces", pieces.specials().get(special.getKey())), TraceInput.of("breakage", order
                            .breakage()))
                    .from(order.walls(wall -> wall.pieces().specials().containsKey(special.getKey())))));
        }
        figures.add(count(type, order.cutting().units(), cutting(order)));
        if (order.lowPieces() > 0) {
            figures.add(count(type, order.lowPieces(), Trace.of(TakeoffFormulas.LOW, TraceInput.of("height", order
                    .unit().height())).from(order.walls(wall -> wall.lowPieces() > 0))));
        }
        figures.add(count(type, order.ordered(), Trace.of(TakeoffFormulas.ORDERED, TraceInput.of("whole", pieces
                .whole()), TraceInput.of("cutting", order.cutting().units()), TraceInput.of("breakage",
                        order
                                .breakage()))
                .from(order.walls())));
    }

    private static Trace cutting(UnitOrder order) {
        List<TraceInput> inputs = new ArrayList<>();
        inputs.add(TraceInput.of("length", order.face()));
        inputs.add(TraceInput.of("kerf", order.cutting().stock().kerf()));
        order.pieces().cuts().forEach((length, count) -> inputs.add(TraceInput.of("pieces of " + length, count)));
        inputs.add(TraceInput.of("least possible", order.cutting().lowerBound()));
        return new Trace(TakeoffFormulas.CUTTING, inputs, order.walls(wall -> wall.pieces().cutCount() > 0));
    }

    private static void addMortar(MortarOrder order, List<Figure> figures) {
        MortarVolumes net = order.net();
        figures.add(volume(order.mix(), net.net(), Trace.of(TakeoffFormulas.MORTAR_NET, input("bed", net.bed()), input(
                "head", net.head()), input("besideCuts", net.besideCuts())).from(order.courses())));
        figures.add(volume(order.mix(), order.ordered(), Trace.of(TakeoffFormulas.MORTAR_ORDERED, input("net", net
                .net()), TraceInput.of("waste", order.waste())).from(order.courses())));
    }

    /**
     * @param wall what was measured
     * @param course one of its courses
     * @param fill how much of the joints is filled
     * @return bed, head and mortar beside cuts, one line for each run and place that has any
     */
    public static List<Figure> ofCourse(LaidWall wall, LaidCourse course, JointFill fill) {
        List<Figure> figures = new ArrayList<>();
        List<String> element = List.of(wall.element(course.number()));
        for (LaidRun run : course.runs()) {
            MortarVolumes mortar = new WallTakeoff(fill).mortar(run, course, wall.thickness());
            add(TakeoffFormulas.BED, mortar.bed(), List.of(TraceInput.of("length", run.length()), TraceInput.of(
                    "bedJoint", course.bedJoint()), TraceInput.of("thickness", wall.thickness()),
                    TraceInput.of(
                            "bedFill", fill.bed())),
                    element, figures);
            List<TraceInput> head = List.of(TraceInput.of("jointTotal", run.jointTotal()), TraceInput.of("joints", run
                    .jointCount()), TraceInput.of("besideCuts", run.jointsBesideCuts()), TraceInput.of("height",
                            course.height()),
                    TraceInput.of("thickness", wall.thickness()), TraceInput.of("headFill",
                            fill.head()));
            add(TakeoffFormulas.HEAD, mortar.head(), head, element, figures);
            add(TakeoffFormulas.BESIDE_CUTS, mortar.besideCuts(), head, element, figures);
        }
        return List.copyOf(figures);
    }

    private static void add(Formula formula, Volume volume, List<TraceInput> inputs, List<String> elements,
            List<Figure> figures) {
        if (volume.cubes().signum() > 0) {
            figures.add(volume(formula.id(), volume, new Trace(formula, inputs, elements)));
        }
    }

    private static Figure count(String item, long count, Trace trace) {
        return new Figure(item, Quantity.of(Fraction.of(count).toDecimal(), UnitCode.PIECE), trace);
    }

    private static Figure volume(String item, Volume volume, Trace trace) {
        return new Figure(item, volume.toQuantity(UnitCode.CUBIC_METRE), trace);
    }

    private static TraceInput input(String symbol, Volume volume) {
        return new TraceInput(symbol, volume.toQuantity(UnitCode.CUBIC_METRE));
    }
}
