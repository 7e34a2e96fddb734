package org.coursewright.core.cost;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.takeoff.MeasuredWall;
import org.coursewright.core.takeoff.Measurement;
import org.coursewright.measure.Length;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;
import org.coursewright.takeoff.Volume;
import org.coursewright.takeoff.allied.Scaffold;
import org.coursewright.takeoff.allied.Ties;
import org.coursewright.takeoff.quantities.CourseQuantities;
import org.coursewright.takeoff.quantities.MortarOrder;

/** Mortar of walls, and the work of laying, cutting, mixing and scaffolding them. */
final class WallWork {

    private static final Formula MIXED = new Formula("mortar.ordered", "net × (1 + waste)",
            "common practice, no source");

    private final Measurement measurement;
    private final CostBrief brief;
    private final Resources resources;
    private final Map<String, String> elements = new HashMap<>();

    WallWork(Measurement measurement, CostBrief brief, Resources resources) {
        this.measurement = measurement;
        this.brief = brief;
        this.resources = resources;
        measurement.walls().forEach(wall -> elements.put(wall.brief().mark(), wall.brief().element()));
    }

    void add() {
        measurement.quantities().mortars().forEach(this::mortar);
        for (MeasuredWall wall : measurement.walls()) {
            lay(wall);
            scaffold(wall);
            ties(wall);
        }
    }

    private void lay(MeasuredWall wall) {
        String element = wall.brief().element();
        for (int i = 0; i < wall.quantities().courses().size(); i++) {
            CourseQuantities course = wall.quantities().courses().get(i);
            resources.addWork(Work.LAY, element, wall.quantities().wall().element(course.course()), wall.bottoms().get(
                    i), Fraction.of(course.pieces().total()));
        }
        resources.addWork(Work.CUT, element, wall.brief().mark(), Length.ZERO, Fraction.of(wall.quantities().pieces()
                .cutCount()));
    }

    private void mortar(MortarOrder order) {
        Map<String, Volume> net = new LinkedHashMap<>();
        Map<String, List<String>> courses = new LinkedHashMap<>();
        Map<String, Volume> byCourse = courseVolumes(order);
        byCourse.forEach((course, volume) -> {
            String element = elements.get(course.substring(0, course.lastIndexOf('/')));
            net.merge(element, volume, Volume::plus);
            courses.computeIfAbsent(element, key -> new ArrayList<>()).add(course);
        });
        net.forEach((element, volume) -> mixed(order, element, volume, courses.get(element)));
    }

    private Map<String, Volume> courseVolumes(MortarOrder order) {
        Map<String, Volume> all = new HashMap<>();
        for (MeasuredWall wall : measurement.walls()) {
            for (CourseQuantities course : wall.quantities().courses()) {
                all.put(wall.quantities().wall().element(course.course()), course.mortar().net());
            }
        }
        Map<String, Volume> ofOrder = new LinkedHashMap<>();
        order.courses().forEach(course -> ofOrder.put(course, all.get(course)));
        return ofOrder;
    }

    private void mixed(MortarOrder order, String element, Volume net, List<String> courses) {
        Volume ordered = net.times(Fraction.ONE.plus(order.waste()));
        Optional<MixBrief> mix = mix(order);
        if (mix.isPresent()) {
            new MixUse(mix.get(), resources).add(element, Work.MORTAR, ordered, courses);
        } else {
            resources.add(order.mix(), element, Work.MORTAR, ordered.in(UnitCode.CUBIC_METRE), UnitCode.CUBIC_METRE,
                    new Trace(MIXED, List.of(new TraceInput("net", net.toQuantity(UnitCode.CUBIC_METRE)), TraceInput.of(
                            "waste", order.waste())), courses));
        }
        resources.addWork(Work.MIX, element, order.mix(), Length.ZERO, ordered.in(UnitCode.CUBIC_METRE));
    }

    private Optional<MixBrief> mix(MortarOrder order) {
        boolean first = order.mix().equals(measurement.brief().shares().mortar().firstMix());
        return (first ? measurement.brief().shares().firstMix() : measurement.brief().shares().restMix())
                .map(brief.mixes()::get);
    }

    private void scaffold(MeasuredWall wall) {
        Length height = top(wall);
        if (!height.isGreaterThan(brief.site().reach())) {
            return;
        }
        Scaffold scaffold = new Scaffold(wall.brief().mark(), wall.length(), height, brief.site().reach(), brief.site()
                .lift());
        scaffold.figures().stream().filter(figure -> figure.quantity().unit().filter(UnitCode.SQUARE_METRE::equals)
                .isPresent()).forEach(face -> {
                    resources.add("scaffold", wall.brief().element(), Work.SCAFFOLD, face.quantity(), face.trace().from(
                            List.of(wall.brief().mark())));
                    resources.addWork(Work.SCAFFOLD, wall.brief().element(), wall.brief().mark(), Length.ZERO, Fraction
                            .of(face.quantity().value()));
                });
    }

    /** Top of the highest course. */
    private static Length top(MeasuredWall wall) {
        int last = wall.bottoms().size() - 1;
        return last < 0
                ? Length.ZERO
                : wall.bottoms().get(last).plus(wall.quantities().wall().courses().get(last).bedJoint()).plus(wall
                        .brief().unit().height());
    }

    private void ties(MeasuredWall wall) {
        if (brief.site().tieCourses() > 0 && wall.tiedEnds() > 0) {
            Ties ties = new Ties(wall.brief().mark(), wall.bottoms().size() * wall.tiedEnds(), brief.site()
                    .tieCourses(), brief.site().tiesPerJoint());
            resources.add("tie", wall.brief().element(), Work.TIES, ties.figure().quantity(), ties.figure().trace()
                    .from(List.of(wall.brief().mark())));
        }
    }
}
