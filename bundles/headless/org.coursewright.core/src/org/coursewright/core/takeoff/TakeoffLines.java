package org.coursewright.core.takeoff;

import java.util.List;

import org.coursewright.measure.Quantity;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.quantities.BuildingQuantities;
import org.coursewright.takeoff.quantities.MortarOrder;
import org.coursewright.takeoff.quantities.TakeoffFigures;
import org.coursewright.takeoff.quantities.UnitOrder;

/** Turns figures of the engine into lines. */
final class TakeoffLines {

    private TakeoffLines() {
    }

    /** @return the lines of one unit type in one bond, which the engine's figures do not name */
    static List<TakeoffLine> of(UnitOrder order, String bond) {
        return TakeoffFigures.of(new BuildingQuantities(List.of(), List.of(order), List.of())).stream()
                .map(figure -> of(figure.item() + " " + bond, figure.quantity(), figure.trace())).toList();
    }

    static List<TakeoffLine> of(MortarOrder order) {
        return TakeoffFigures.of(new BuildingQuantities(List.of(), List.of(), List.of(order))).stream()
                .map(TakeoffLines::of).toList();
    }

    static TakeoffLine of(Figure figure) {
        return of(figure.item(), figure.quantity(), figure.trace());
    }

    static TakeoffLine of(String item, Quantity quantity, Trace trace) {
        return new TakeoffLine(item, quantity, trace.formula().id(), trace.formula().expression(),
                trace.formula().source(),
                trace.inputs().stream().map(input -> new TakeoffLine.Input(input.symbol(), input.value())).toList(),
                trace.elements());
    }
}
