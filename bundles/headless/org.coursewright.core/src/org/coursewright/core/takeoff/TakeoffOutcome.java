package org.coursewright.core.takeoff;

import java.util.List;

import org.coursewright.core.finding.Finding;

/**
 * What a building, or some walls of it, takes: an estimate that rests on its assumptions.
 *
 * @param lines units by type and bond, mortar by mix, lintels by type, wall faces, in that order
 * @param units the units again, as one record for each type and bond
 * @param walls wall by wall, in the order of the layout
 * @param assumptions what the figures rest on, one sentence each
 * @param findings of the layout; what cannot be laid is not in the figures
 */
public record TakeoffOutcome(List<TakeoffLine> lines, List<UnitsTaken> units, List<WallTaken> walls,
        List<String> assumptions, List<Finding> findings) {

    public TakeoffOutcome {
        lines = List.copyOf(lines);
        units = List.copyOf(units);
        walls = List.copyOf(walls);
        assumptions = List.copyOf(assumptions);
        findings = List.copyOf(findings);
    }
}
