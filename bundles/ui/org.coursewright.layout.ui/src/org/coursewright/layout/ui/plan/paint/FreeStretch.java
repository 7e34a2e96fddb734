package org.coursewright.layout.ui.plan.paint;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;

/** A stretch of a wall without an opening, as offsets from its outer start face. */
record FreeStretch(Length from, Length to) {

    /** The longest there is. */
    static Optional<FreeStretch> longest(WallShape wall) {
        List<Opening> openings = wall.wall().getOpenings().stream().sorted(Comparator.comparing(Opening::getOffset))
                .toList();
        List<Length> begins = Stream.concat(Stream.of(Length.ZERO),
                openings.stream().map(opening -> opening.getOffset().plus(opening.getWidth()))).toList();
        List<Length> ends = Stream.concat(openings.stream().map(Opening::getOffset), Stream.of(wall.length())).toList();
        return Stream.iterate(0, i -> i < begins.size(), i -> i + 1)
                .map(i -> new FreeStretch(begins.get(i), ends.get(i)))
                .max(Comparator.comparing(stretch -> stretch.to().minus(stretch.from())));
    }

    /** The offset a share of the stretch from its start. */
    Length at(double share) {
        return from.plus(Length.ofUnits(Math.round(share * to.minus(from).units())));
    }
}
