package org.coursewright.layout.ui.plan.paint;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Wall;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;

/** Finds a place for the mark of each wall: in its masonry if it is thick enough, else beside it where nothing else is. */
public final class WallMarks {

    private static final int GAP = 2;
    private static final List<Double> SHARES = List.of(0.5, 0.25, 0.75);

    private final PlanPlace place;
    private final List<Rectangle> taken;
    private final Map<Wall, SlantedText> found = new HashMap<>();

    private WallMarks(PlanPlace place, List<Rectangle> taken) {
        this.place = place;
        this.taken = taken;
    }

    /**
     * @param walls that are drawn; those without a mark get none
     * @param place of the plan on paper
     * @param words boxes around other words in the plan
     * @return the marks of those that have room
     */
    public static Map<Wall, SlantedText> of(Collection<WallShape> walls, PlanPlace place,
            Collection<Rectangle> words) {
        List<Rectangle> taken = new ArrayList<>(words);
        walls.forEach(wall -> taken.add(place.pixels(wall.outline()).getBounds()));
        WallMarks marks = new WallMarks(place, taken);
        walls.stream().filter(wall -> wall.wall().getMark() != null).forEach(marks::find);
        return marks.found;
    }

    private void find(WallShape wall) {
        FreeStretch.longest(wall).flatMap(stretch -> inside(wall, stretch).or(() -> beside(wall, stretch)))
                .ifPresent(mark -> {
                    found.put(wall.wall(), mark);
                    taken.add(mark.bounds());
                });
    }

    private Optional<SlantedText> inside(WallShape wall, FreeStretch stretch) {
        String mark = wall.wall().getMark();
        Dimension size = place.lettering().size(mark);
        boolean fits = size.height <= place.scale().toPixels(wall.module().thickness()) + GAP
                && size.width + 2 * GAP <= place.scale().toPixels(stretch.to().minus(stretch.from()));
        return fits
                ? Optional.of(SlantedText.along(wall.heading(), mark,
                        place.pixel(wall.at(stretch.at(SHARES.get(0)), Length.ZERO)), place.lettering()))
                : Optional.empty();
    }

    private Optional<SlantedText> beside(WallShape wall, FreeStretch stretch) {
        return SHARES.stream()
                .flatMap(share -> Stream.of(true, false).map(left -> beside(wall, stretch.at(share), left)))
                .filter(mark -> taken.stream().noneMatch(mark.bounds()::intersects)).findFirst();
    }

    private SlantedText beside(WallShape wall, Length at, boolean left) {
        String mark = wall.wall().getMark();
        Dimension size = place.lettering().size(mark);
        Heading away = left ? wall.heading().left() : wall.heading().left().reversed();
        int room = (int) Math.round(Math.abs(away.east()) * size.width / 2 + Math.abs(away.north()) * size.height / 2);
        Point face = place.pixel(wall.at(at, left ? wall.module().half() : wall.module().half().negated()));
        return new SlantedText(mark, PlanPlace.ahead(face, away, room + 2 * GAP), 0, place.lettering());
    }
}
