package org.coursewright.exchange.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;

/** Reads the walls of a project that has been laid. Reads only. */
public final class SheetWalls {

    private SheetWalls() {
    }

    /**
     * All walls that are laid.
     *
     * @param project that was laid, not null and not changed since
     * @param outcome how it is laid, not null
     * @return its walls in the order they were laid
     */
    public static List<SheetWall> of(Project project, LayoutOutcome outcome) {
        Map<String, Wall> walls = project.getBuilding() == null
                ? Map.of()
                : project.getBuilding().getStoreys().stream().flatMap(storey -> storey.getWalls().stream())
                        .collect(Collectors.toMap(Wall::getMark, Function.identity(), (first, second) -> first));
        List<WallLayout> layouts = outcome.result().walls();
        return IntStream.range(0, layouts.size()).mapToObj(
                i -> read(project, walls.get(layouts.get(i).mark()), outcome.faces().get(i), layouts.get(i))).toList();
    }

    private static SheetWall read(Project project, Wall wall, WallFace face, WallLayout layout) {
        UnitType unit = wall.getUnitType();
        LengthFormat format = LengthFormat.of(project.getDisplayUnit());
        Length thickness = wall.getBond() == Bond.HEADER ? unit.getLength() : unit.getWidth();
        return new SheetWall(Optional.ofNullable(project.getName()).orElse(""), describe(unit, format),
                wall.getBond().getLiteral().toLowerCase(Locale.ROOT), thickness, unit.getHeight(),
                wall.getOpenings().stream().map(SheetWalls::read).sorted(Comparator.comparing(SheetOpening::offset))
                        .toList(),
                top(wall, face.length()), format, face, layout);
    }

    private static String describe(UnitType unit, LengthFormat format) {
        return "%s, %s long, %s wide, %s high".formatted(unit.getMark(), format.format(unit.getLength()),
                format.format(unit.getWidth()), format.format(unit.getHeight()));
    }

    private static SheetOpening read(Opening opening) {
        return new SheetOpening(opening.getMark(), opening.getOffset(), opening.getWidth(), opening.getSill(),
                opening.getHeight());
    }

    /** The top goes on level from its first and its last point to the wall's faces. */
    private static List<TopMark> top(Wall wall, Length length) {
        List<TopMark> given = wall.getTopProfile().stream()
                .map(point -> new TopMark(point.getOffset(), point.getHeight()))
                .sorted(Comparator.comparing(TopMark::offset)).toList();
        Length first = given.isEmpty() ? wall.getHeight() : given.get(0).height();
        Length last = given.isEmpty() ? wall.getHeight() : given.get(given.size() - 1).height();
        List<TopMark> whole = new ArrayList<>();
        whole.add(new TopMark(Length.ZERO, first));
        whole.addAll(given);
        whole.add(new TopMark(length, last));
        return whole.stream().distinct().toList();
    }
}
