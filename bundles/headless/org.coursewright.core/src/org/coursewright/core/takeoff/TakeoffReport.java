package org.coursewright.core.takeoff;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.core.finding.Finding;
import org.coursewright.takeoff.quantities.BuildingQuantities;
import org.coursewright.takeoff.quantities.UnitOrder;

/**
 * Puts measured walls and what is ordered for them together.
 *
 * @param walls in the order of the layout
 * @param quantities of these walls
 */
record TakeoffReport(List<MeasuredWall> walls, BuildingQuantities quantities) {

    static TakeoffReport of(Measurement measurement) {
        return new TakeoffReport(measurement.walls(), measurement.quantities());
    }

    TakeoffOutcome outcome(List<String> assumptions, List<Finding> findings) {
        List<TakeoffLine> lines = new ArrayList<>();
        quantities.units().forEach(order -> lines.addAll(TakeoffLines.of(order, bond(order))));
        quantities.mortars().forEach(order -> lines.addAll(TakeoffLines.of(order)));
        lines.addAll(LintelLines.of(walls.stream().map(MeasuredWall::brief).toList()));
        lines.add(WallFaceArea.total(walls.stream().map(MeasuredWall::face).toList()));
        return new TakeoffOutcome(lines, quantities.units().stream().map(this::taken).toList(),
                walls.stream().map(MeasuredWall::taken).toList(), assumptions, findings);
    }

    private UnitsTaken taken(UnitOrder order) {
        return new UnitsTaken(order.unit().type(), bond(order), MeasuredWall.count(order.pieces()),
                order.cutting().units(), order.cutting().proven(), order.ordered(),
                order.orderedSpecials().values().stream().mapToLong(Long::longValue).sum(), order.lowPieces());
    }

    /** All walls of an order show the same face of the same unit, so they are laid in one bond. */
    private String bond(UnitOrder order) {
        return walls.stream().map(MeasuredWall::brief).filter(wall -> order.walls().contains(wall.mark()))
                .map(WallBrief::bond).findFirst().orElseThrow();
    }
}
