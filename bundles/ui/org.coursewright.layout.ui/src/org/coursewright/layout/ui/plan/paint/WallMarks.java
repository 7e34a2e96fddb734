package org.coursewright.layout.ui.plan.paint;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Wall;
import org.eclipse.draw2d.geometry.Dimension;

/**
 * Finds a place for the mark of each wall: in its masonry if it is thick enough, else beside it where nothing else is.
 *
 * @param place of the plan on paper
 */
public record WallMarks(PlanPlace place) {

    private static final int GAP = 2;
    private static final double MIDDLE = 0.5;
    /** Of the longest stretch without an opening, from its middle outwards. */
    private static final List<Double> SHARES = IntStream.rangeClosed(0, 6).mapToObj(i -> i / 16.0)
            .flatMap(off -> Stream.of(MIDDLE - off, MIDDLE + off)).distinct().toList();

    /**
     * @param paper on which the marks are written
     * @param walls that are drawn; those without a mark get none
     * @return the marks of those that have room
     */
    public Map<Wall, SlantedText> on(FreePaper paper, Collection<WallShape> walls) {
        Map<Wall, SlantedText> found = new HashMap<>();
        walls.stream().filter(wall -> wall.wall().getMark() != null)
                .forEach(wall -> find(paper, wall).ifPresent(mark -> found.put(wall.wall(), mark)));
        return found;
    }

    private Optional<SlantedText> find(FreePaper paper, WallShape wall) {
        Optional<FreeStretch> stretch = FreeStretch.longest(wall);
        Optional<SlantedText> inside = stretch.flatMap(each -> inside(wall, each))
                .filter(mark -> !paper.isWritten(mark.bounds()));
        inside.ifPresent(mark -> paper.take(mark.bounds()));
        return inside.or(() -> stretch.flatMap(each -> paper.claim(() -> beside(wall, each))));
    }

    private Optional<SlantedText> inside(WallShape wall, FreeStretch stretch) {
        String mark = wall.wall().getMark();
        Dimension size = place.lettering().size(mark);
        boolean fits = size.height <= place.scale().toPixels(wall.module().thickness()) + GAP
                && size.width + 2 * GAP <= place.scale().toPixels(stretch.to().minus(stretch.from()));
        return fits
                ? Optional.of(SlantedText.along(wall.heading(), mark,
                        place.pixel(wall.at(stretch.at(MIDDLE), Length.ZERO)), place.lettering()))
                : Optional.empty();
    }

    private Stream<SlantedText> beside(WallShape wall, FreeStretch stretch) {
        MarkBeside mark = new MarkBeside(wall.wall().getMark(), wall, place);
        return SHARES.stream()
                .flatMap(share -> Stream.of(true, false).map(left -> mark.at(stretch.at(share), left, 0)));
    }
}
