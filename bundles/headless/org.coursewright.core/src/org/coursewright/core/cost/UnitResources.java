package org.coursewright.core.cost;

import java.util.ArrayList;
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
import org.coursewright.takeoff.quantities.PieceTally;
import org.coursewright.takeoff.quantities.UnitOrder;

/** Units ordered or pressed, shared out among elements by the units and pieces laid there. */
final class UnitResources {

    private static final Formula SHARE = new Formula("units.share",
            "ordered, shared out by laid ÷ laidInAll; whole units, largest remainders first",
            "common practice, no source");

    private final Measurement measurement;
    private final CostBrief brief;
    private final Resources resources;

    UnitResources(Measurement measurement, CostBrief brief, Resources resources) {
        this.measurement = measurement;
        this.brief = brief;
        this.resources = resources;
    }

    void add() {
        measurement.quantities().units().forEach(this::add);
    }

    private void add(UnitOrder order) {
        Map<String, PieceTally> laid = new LinkedHashMap<>();
        Map<String, List<String>> marks = new LinkedHashMap<>();
        for (MeasuredWall wall : measurement.walls()) {
            if (order.walls().contains(wall.brief().mark())) {
                laid.merge(wall.brief().element(), wall.quantities().pieces(), PieceTally::plus);
                marks.computeIfAbsent(wall.brief().element(), key -> new ArrayList<>()).add(wall.brief().mark());
            }
        }
        List<Fraction> used = laid.values().stream().map(pieces -> Fraction.of(pieces.whole()).plus(cut(pieces, order
                .face()))).toList();
        share(order, order.unit().type(), order.face(), order.ordered(), used, marks);
        order.orderedSpecials().forEach((length, ordered) -> share(order, special(order.unit().type(), length), length,
                ordered, laid.values().stream().map(pieces -> Fraction.of(pieces.specials().getOrDefault(length, 0L)))
                        .toList(),
                marks));
    }

    /** @return what rates call a special of a length */
    static String special(String type, Length length) {
        return type + " " + length;
    }

    /** Cut pieces by the part of a unit that they are. */
    private static Fraction cut(PieceTally pieces, Length face) {
        Fraction units = Fraction.ZERO;
        for (Map.Entry<Length, Long> cut : pieces.cuts().entrySet()) {
            units = units.plus(Fraction.of(cut.getKey().units(), face.units()).times(cut.getValue()));
        }
        return units;
    }

    private void share(UnitOrder order, String resource, Length length, long ordered, List<Fraction> laid,
            Map<String, List<String>> marks) {
        List<Long> parts = Share.out(ordered, laid);
        Fraction all = laid.stream().reduce(Fraction.ZERO, Fraction::plus);
        int i = 0;
        for (Map.Entry<String, List<String>> element : marks.entrySet()) {
            Trace trace = Trace.of(SHARE, TraceInput.of("ordered", ordered), TraceInput.of("laid", laid.get(i)),
                    TraceInput.of("laidInAll", all)).from(element.getValue());
            supply(order, resource, length, element.getKey(), parts.get(i), trace);
            i++;
        }
    }

    private void supply(UnitOrder order, String resource, Length length, String element, long count, Trace trace) {
        String type = order.unit().type();
        Optional<UnitSupply> supply = Optional.ofNullable(brief.units().get(type));
        if (supply.filter(UnitSupply::made).isEmpty()) {
            resources.add(resource, title(type, length, order), element, Work.UNITS, Fraction.of(count), UnitCode.PIECE,
                    trace);
            supply.flatMap(UnitSupply::mass).ifPresent(mass -> resources.haul(element, resource, mass.times(count)
                    .times(Fraction.of(length.units(), order.face().units()))));
            return;
        }
        Optional<MixBrief> mix = supply.get().mix().filter(MixBrief::isPressable);
        if (mix.isEmpty()) {
            resources.findings().error("unit.mix", Resources.named("unit type " + type),
                    "It is made on site, but has no mix of soil and stabiliser with a dry density and densities of all parts. "
                            + "Give it one.");
        }
        mix.ifPresent(each -> new PressUse(each, block(order, length), resources).add(element, count, trace.elements(),
                resource));
    }

    private String title(String type, Length length, UnitOrder order) {
        return length.equals(order.face()) ? type : type + " " + measurement.brief().format().format(length);
    }

    /** Along the wall a special is as long as it says; its other two sides are those of the unit. */
    private static Volume block(UnitOrder order, Length length) {
        Length across = order.face().equals(order.unit().length()) ? order.unit().width() : order.unit().length();
        return Volume.of(length, across, order.unit().height());
    }
}
