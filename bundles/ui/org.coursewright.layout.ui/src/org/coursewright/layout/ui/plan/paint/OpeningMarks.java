package org.coursewright.layout.ui.plan.paint;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;

/**
 * Finds a place for the mark of each opening: beside it, stepping aside where another wall or another mark is in the way.
 *
 * @param place of the plan on paper
 * @param sides of a wall, true for its left, on which marks of its openings may stand, the better one first
 */
public record OpeningMarks(PlanPlace place, Function<WallShape, List<Boolean>> sides) {

    /** How far a mark may step aside, in its own extent: beyond a half it would not stand opposite any more. */
    private static final List<Double> ASIDE = List.of(0.0, -0.25, 0.25, -0.5, 0.5);

    /**
     * @param walls that are drawn
     * @param paper on which the marks are written
     * @return the marks of the openings that have one, and room for it
     */
    public Map<Opening, SlantedText> on(FreePaper paper, Collection<WallShape> walls) {
        Map<Opening, SlantedText> found = new HashMap<>();
        walls.forEach(wall -> wall.wall().getOpenings()
                .forEach(opening -> paper.claim(() -> places(wall, opening))
                        .ifPresent(mark -> found.put(opening, mark))));
        return found;
    }

    private Stream<SlantedText> places(WallShape wall, Opening opening) {
        Length middle = opening.getOffset().plus(Length.ofUnits(opening.getWidth().units() / 2));
        return Optional.ofNullable(opening.getMark()).map(mark -> new MarkBeside(mark, wall, place)).stream()
                .flatMap(mark -> sides.apply(wall).stream()
                        .flatMap(left -> ASIDE.stream().map(aside -> mark.at(middle, left, aside))));
    }
}
