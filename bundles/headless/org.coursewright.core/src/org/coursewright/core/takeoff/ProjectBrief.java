package org.coursewright.core.takeoff;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.core.display.ProjectFormat;
import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Findings;
import org.coursewright.core.validity.NumberValidity;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;
import org.coursewright.takeoff.Fraction;

/**
 * What the take-off needs of a project besides its layout.
 *
 * @param walls those that have a mark and a unit type with three dimensions; no other is laid
 * @param format how the project writes lengths
 * @param shares mortars, waste and filled joints
 * @param findings numbers that cannot be used
 */
public record ProjectBrief(List<WallBrief> walls, LengthFormat format, TakeoffShares shares, List<Finding> findings) {

    public ProjectBrief {
        walls = List.copyOf(walls);
        Objects.requireNonNull(format, "format");
        Objects.requireNonNull(shares, "shares");
        findings = List.copyOf(findings);
    }

    /** Reads a project, on its editing thread. */
    public static ProjectBrief of(Project project) {
        Findings findings = new Findings();
        Map<UnitType, Fraction> breakages = new HashMap<>();
        List<WallBrief> walls = Stream.ofNullable(project.getBuilding())
                .flatMap(building -> building.getStoreys().stream()).flatMap(storey -> storey.getWalls().stream())
                .filter(ProjectBrief::isMeasurable)
                .map(wall -> WallBrief.of(wall, breakages.computeIfAbsent(wall.getUnitType(), type -> breakage(type,
                        findings))))
                .toList();
        TakeoffShares shares = TakeoffShares.of(project, findings);
        return new ProjectBrief(walls, ProjectFormat.of(project), shares, findings.gravestFirst());
    }

    private static Fraction breakage(UnitType type, Findings findings) {
        return new NumberValidity(ElementReference.of(type, "unit type " + type.getMark()), findings)
                .share("breakage", type.getBreakageShare())
                .orElse(TakeoffShares.USUAL_BREAKAGE);
    }

    /** @return only the wall with that mark, if there is one */
    ProjectBrief only(String mark) {
        return new ProjectBrief(walls.stream().filter(wall -> wall.mark().equals(mark)).toList(), format, shares,
                findings);
    }

    Optional<WallBrief> wall(String mark) {
        return walls.stream().filter(wall -> wall.mark().equals(mark)).findFirst();
    }

    private static boolean isMeasurable(Wall wall) {
        UnitType unit = wall.getUnitType();
        return wall.getMark() != null && unit != null && Stream.of(Optional.ofNullable(unit.getLength()),
                Optional.ofNullable(unit.getWidth()), Optional.ofNullable(unit.getHeight()))
                .allMatch(side -> side.filter(length -> length.signum() > 0).isPresent());
    }
}
