package org.coursewright.core.cost;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.core.takeoff.TakeoffLine;
import org.coursewright.measure.Length;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;
import org.coursewright.takeoff.labour.WorkPortion;

/** Gathers what a building takes: lines of resources, and work that will take hours. Confined to one computation. */
final class Resources {

    private final List<ResourceLine> lines = new ArrayList<>();
    private final Map<Work, List<WorkDone>> work = new EnumMap<>(Work.class);
    private final List<Hauled> hauled = new ArrayList<>();
    private final Findings findings = new Findings();

    /**
     * Something that is brought to the site.
     *
     * @param element ASTM E1557 code it is for
     * @param resource what
     * @param mass kg
     */
    record Hauled(String element, String resource, Fraction mass) {
    }

    /** Adds an amount of a resource that is called as rates call it. */
    void add(String resource, String element, Work of, Fraction amount, UnitCode unit, Trace trace) {
        add(resource, resource, element, of, amount, unit, trace);
    }

    /** Adds an amount of a resource that people call by another title; nothing is left out, but no line says nothing. */
    void add(String resource, String title, String element, Work of, Fraction amount, UnitCode unit, Trace trace) {
        if (amount.signum() != 0) {
            lines.add(new ResourceLine(resource, element, of, line(title, amount, unit, trace)));
        }
    }

    /** Adds an amount whose formula has been worked out by the engine. */
    void add(String resource, String element, Work of, Quantity quantity, Trace trace) {
        add(resource, element, of, Fraction.of(quantity.value()), quantity.unit().orElseThrow(), trace);
    }

    /** Adds work on something. */
    void addWork(Work of, String element, String on, Length height, Fraction quantity) {
        if (quantity.signum() > 0) {
            work.computeIfAbsent(of, key -> new ArrayList<>()).add(new WorkDone(element, new WorkPortion(on, height,
                    quantity)));
        }
    }

    /** Notes that something is brought to the site. */
    void haul(String element, String resource, Fraction mass) {
        hauled.add(new Hauled(element, resource, mass));
    }

    List<Hauled> hauled() {
        return hauled;
    }

    /** @return what a finding is about that has no element of its own, or is known by its mark only */
    static ElementReference named(String name) {
        return new ElementReference(name, Optional.empty());
    }

    List<ResourceLine> lines() {
        return lines;
    }

    List<WorkDone> work(Work of) {
        return Optional.ofNullable(work.get(of)).orElse(List.of());
    }

    Findings findings() {
        return findings;
    }

    private static TakeoffLine line(String title, Fraction amount, UnitCode unit, Trace trace) {
        return new TakeoffLine(title, Quantity.of(amount.toDecimal(), unit), trace.formula().id(), trace.formula()
                .expression(), trace.formula().source(),
                trace.inputs().stream().map(Resources::input).toList(), trace.elements());
    }

    private static TakeoffLine.Input input(TraceInput input) {
        return new TakeoffLine.Input(input.symbol(), input.value());
    }
}
