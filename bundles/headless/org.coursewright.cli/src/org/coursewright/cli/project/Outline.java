package org.coursewright.cli.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.coursewright.core.display.ProjectFormat;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.BondRule;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.LintelType;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;

/** A project as an outline in plain text, lengths as the project shows them. */
final class Outline {

    private final Contents contents;
    private final LengthFormat format;
    private final List<String> lines = new ArrayList<>();

    Outline(Project project) {
        contents = new Contents(project);
        format = ProjectFormat.of(project);
    }

    String text() {
        lines.add("Project %s".formatted(contents.name()));
        lines.add(contents.summary());
        lines.add("");
        contents.units().forEach(this::add);
        contents.lintels().forEach(this::add);
        Optional.ofNullable(contents.project().getBondRule()).ifPresent(rule -> lines.add("Bond rule: " + text(rule)));
        contents.storeys().forEach(this::add);
        return String.join("\n", lines);
    }

    private void add(UnitType unit) {
        String mass = unit.getMass() == null ? "" : ", " + unit.getMass().toPlainString() + " kg";
        lines.add("Unit %s: %s long, %s wide, %s high%s%s".formatted(Contents.mark(unit), shown(unit.getLength()),
                shown(unit.getWidth()), shown(unit.getHeight()), mass, specials(unit)));
    }

    private String specials(UnitType unit) {
        return unit.getSpecialLengths().isEmpty()
                ? ""
                : unit.getSpecialLengths().stream().map(this::shown)
                        .collect(Collectors.joining(", ", "; specials ", ""));
    }

    private void add(LintelType lintel) {
        lines.add("Lintel %s: %s deep, bearing %s at each end".formatted(Contents.mark(lintel),
                shown(lintel.getHeight()), shown(lintel.getBearing())));
    }

    private String text(BondRule rule) {
        String lap = rule.getLeastLap() == null ? "a quarter of the unit as seen" : shown(rule.getLeastLap());
        return "lap %s; head joint %s to %s, aimed at %s; bed joint %s to %s, aimed at %s; shortest piece %s".formatted(
                lap, shown(rule.getHeadLeast()), shown(rule.getHeadMost()), shown(rule.getHeadNominal()),
                shown(rule.getBedLeast()), shown(rule.getBedMost()), shown(rule.getBedNominal()),
                shown(rule.getShortestPiece()));
    }

    private void add(Storey storey) {
        lines.add("");
        lines.add("Storey %s, at %s".formatted(Contents.mark(storey), shown(storey.getElevation())));
        storey.getWalls().forEach(this::add);
    }

    private void add(Wall wall) {
        String own = wall.getBondRule() == null ? "" : "; own rule: " + text(wall.getBondRule());
        lines.add("  Wall %s: (%s, %s) to (%s, %s), %s high%s, %s in %s bond%s%s".formatted(Contents.mark(wall),
                shown(wall.getFromX()), shown(wall.getFromY()), shown(wall.getToX()), shown(wall.getToY()),
                shown(wall.getHeight()), top(wall), Contents.mark(wall.getUnitType()), bond(wall.getBond()),
                tolerances(wall.getMoveTolerance(), wall.getSizeTolerance()), own));
        wall.getOpenings().forEach(this::add);
    }

    private String top(Wall wall) {
        return wall.getTopProfile().stream().map(point -> point.getHeight()).max(Length::compareTo)
                .map(highest -> ", rising to " + shown(highest)).orElse("");
    }

    private void add(Opening opening) {
        String lintel = opening.getLintelType() == null ? "no lintel" : Contents.mark(opening.getLintelType());
        lines.add("    %s %s: %s wide, %s high, %s from the start, sill %s, %s%s".formatted(
                capitalised(opening.getKind().getLiteral()), Contents.mark(opening), shown(opening.getWidth()),
                shown(opening.getHeight()), shown(opening.getOffset()), shown(opening.getSill()), lintel,
                tolerances(opening.getMoveTolerance(), opening.getSizeTolerance())));
    }

    private String tolerances(Length move, Length size) {
        return tolerance("move", move) + tolerance("size", size);
    }

    private String tolerance(String word, Length tolerance) {
        return tolerance.signum() == 0 ? "" : ", may %s ±%s".formatted(word, shown(tolerance));
    }

    private static String bond(Bond bond) {
        return bond == null ? "no" : bond.getLiteral();
    }

    private static String capitalised(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private String shown(Length length) {
        return length == null ? "(not given)" : format.format(length);
    }
}
