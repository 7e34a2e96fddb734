package org.coursewright.layout.ui.plan.shape;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.coursewright.measure.Length;

/**
 * The upright box around something in plan.
 *
 * @param southWest its corner with the least coordinates
 * @param northEast its corner with the greatest coordinates
 */
public record PlanBounds(PlanPoint southWest, PlanPoint northEast) {

    /**
     * @param points any
     * @return the box around them, empty if there are none
     */
    public static Optional<PlanBounds> of(Collection<PlanPoint> points) {
        List<Length> x = points.stream().map(PlanPoint::x).sorted().toList();
        List<Length> y = points.stream().map(PlanPoint::y).sorted(Comparator.naturalOrder()).toList();
        return points.isEmpty()
                ? Optional.empty()
                : Optional.of(new PlanBounds(new PlanPoint(x.get(0), y.get(0)),
                        new PlanPoint(x.get(x.size() - 1), y.get(y.size() - 1))));
    }

    /** @return from west to east */
    public Length width() {
        return northEast.x().minus(southWest.x());
    }

    /** @return from south to north */
    public Length depth() {
        return northEast.y().minus(southWest.y());
    }

    /** @return the point in the middle */
    public PlanPoint centre() {
        return southWest.halfway(northEast);
    }
}
