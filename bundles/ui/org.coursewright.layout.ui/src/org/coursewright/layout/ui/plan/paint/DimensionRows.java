package org.coursewright.layout.ui.plan.paint;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.model.building.Wall;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Finds a row for each dimension string, so that no words lie on walls or on other words, and strings keep apart. Where
 * there is no such row, lengths that would lie on something are left out.
 */
public final class DimensionRows {

    private static final int STEP = 6;
    private static final int FARTHEST = 132;
    private static final int AIR = 2;
    private static final double SLANTED = 0.01;

    private final PlanPlace place;
    private final PlanInk ink;
    private final Function<Dimension, String> text;
    private final List<Box> boxes;
    private final List<Rectangle> taken = new ArrayList<>();
    private final List<Rectangle> dimensionWords = new ArrayList<>();
    private final List<Rectangle> extensions = new ArrayList<>();
    private final List<Rectangle> lines = new ArrayList<>();
    private final Map<Dimension, DimensionRow> rows = new HashMap<>();
    private final Map<Wall, Integer> next = new HashMap<>();

    private DimensionRows(PlanPlace place, PlanInk ink, Function<Dimension, String> text, Collection<WallShape> walls,
            Collection<Rectangle> words) {
        this.place = place;
        this.ink = ink;
        this.text = text;
        this.boxes = walls.stream().filter(DimensionRows::isUpright).map(
                wall -> new Box(wall.heading(), place.pixels(wall.outline()).getBounds())).toList();
        taken.addAll(words);
    }

    /**
     * @param dimensions in the order of their walls, those of one string one after the other
     * @param text of a dimension
     * @param place of the plan on paper
     * @param ink that is drawn with
     * @param walls that are drawn
     * @param words boxes around other words in the plan
     * @return where each is drawn
     */
    public static Map<Dimension, DimensionRow> of(List<Dimension> dimensions, Function<Dimension, String> text,
            PlanPlace place, PlanInk ink, Collection<WallShape> walls, Collection<Rectangle> words) {
        DimensionRows found = new DimensionRows(place, ink, text, walls, words);
        List<List<Dimension>> strings = strings(dimensions);
        strings.stream().filter(string -> string.get(0).row() == 0).forEach(found::place);
        strings.stream().filter(string -> string.get(0).row() > 0).forEach(found::place);
        return found.rows;
    }

    private static List<List<Dimension>> strings(List<Dimension> dimensions) {
        List<List<Dimension>> strings = new ArrayList<>();
        for (Dimension each : dimensions) {
            List<Dimension> last = strings.isEmpty() ? List.of() : strings.get(strings.size() - 1);
            if (!last.isEmpty() && continues(last.get(last.size() - 1), each)) {
                last.add(each);
            } else {
                strings.add(new ArrayList<>(List.of(each)));
            }
        }
        return strings;
    }

    private static boolean continues(Dimension one, Dimension next) {
        return one.wall() == next.wall() && one.row() == next.row() && one.to().equals(next.from());
    }

    private void place(List<Dimension> string) {
        int nearest = next.getOrDefault(string.get(0).wall(), DimensionRow.FIRST.distance());
        List<DimensionPainting> placed = free(string, nearest, false).or(() -> free(string, nearest, true))
                .orElseGet(() -> at(string, nearest, true).stream().map(this::silencedIfTaken).toList());
        int distance = placed.get(0).row().distance();
        placed.forEach(each -> rows.put(each.dimension(), each.row()));
        int deepest = placed.stream().mapToInt(DimensionPainting::depth).max().orElse(0);
        next.merge(string.get(0).wall(), distance + Math.max(DimensionRow.APART, deepest), Math::max);
        placed.forEach(each -> {
            lines.add(each.line());
            extensions.addAll(each.extensions());
            each.words().ifPresent(taken::add);
            each.words().ifPresent(dimensionWords::add);
        });
    }

    /** At the least distance at which nothing is in the way; without most of the lines from faces if there is no other. */
    private Optional<List<DimensionPainting>> free(List<Dimension> string, int nearest, boolean stubs) {
        return IntStream.iterate(nearest, at -> at <= nearest + FARTHEST, at -> at + STEP)
                .mapToObj(at -> at(string, at, stubs)).filter(placed -> placed.stream().allMatch(this::isFree))
                .findFirst();
    }

    private List<DimensionPainting> at(List<Dimension> string, int distance, boolean stubs) {
        return string.stream().map(each -> painting(each, distance, stubs)).toList();
    }

    private boolean isFree(DimensionPainting painting) {
        Rectangle line = painting.line();
        return taken.stream().noneMatch(line::intersects)
                && painting.extensions().stream().noneMatch(each -> isOn(each, dimensionWords))
                && lines.stream().noneMatch(other -> other.intersects(line) && isLevel(other) == isLevel(line))
                && boxes(painting.dimension(), true).noneMatch(line::intersects)
                && !hasTakenWords(painting);
    }

    private DimensionPainting silencedIfTaken(DimensionPainting painting) {
        return hasTakenWords(painting) ? painting.silenced() : painting;
    }

    private boolean hasTakenWords(DimensionPainting painting) {
        return painting.words().filter(words -> isTaken(painting, words.getExpanded(AIR, 0))).isPresent();
    }

    private boolean isTaken(DimensionPainting painting, Rectangle words) {
        return isOn(words, taken) || isOn(words, lines) || isOn(words, extensions)
                || boxes(painting.dimension(), false).anyMatch(words::intersects);
    }

    private static boolean isOn(Rectangle box, List<Rectangle> others) {
        return others.stream().anyMatch(box::intersects);
    }

    private static boolean isLevel(Rectangle line) {
        return line.width > line.height;
    }

    /** The box around a wall; around a slanted one it would say little. */
    private record Box(Heading heading, Rectangle bounds) {
    }

    private static boolean isUpright(WallShape wall) {
        return Math.abs(wall.heading().east() * wall.heading().north()) < SLANTED;
    }

    private Stream<Rectangle> boxes(Dimension dimension, boolean parallel) {
        return boxes.stream().filter(box -> !parallel || !box.heading().isParallel(dimension.away())).map(Box::bounds);
    }

    /** Lengths stand across their line only where they have no room along it. */
    private DimensionPainting painting(Dimension dimension, int distance, boolean stubs) {
        DimensionPainting along = painting(dimension, new DimensionRow(distance, false, stubs, false));
        DimensionPainting across = painting(dimension, new DimensionRow(distance, true, stubs, false));
        return along.isLegible() || !across.isLegible() ? along : across;
    }

    private DimensionPainting painting(Dimension dimension, DimensionRow row) {
        return new DimensionPainting(dimension, text.apply(dimension), row, place, ink, List.of(), false);
    }
}
