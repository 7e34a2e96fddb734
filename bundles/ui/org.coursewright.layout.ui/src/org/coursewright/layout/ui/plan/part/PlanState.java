package org.coursewright.layout.ui.plan.part;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.coursewright.layout.ui.plan.paint.Lettering;
import org.coursewright.layout.ui.plan.paint.PlanInk;
import org.coursewright.layout.ui.plan.paint.PlanPlace;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Project;

/**
 * What an editor shows of a storey at present, beside the model.
 *
 * @param project that the storey belongs to
 * @param corner point of the plan in the upper left corner of the paper
 * @param shape how its walls lie
 * @param measuredLeft walls whose dimension strings are on their left
 * @param outside dimensions outside the building, whether they are shown or not
 * @param dimensions that are shown
 * @param underlay another storey underneath
 * @param ink to draw with
 * @param lettering of words
 * @param format of lengths
 * @param grid step of the grid, empty if it is not shown
 * @param trouble what is wrong with elements
 * @param laid how the building was last laid, for the handing of corners; empty before it was
 */
public record PlanState(Project project, PlanPoint corner, StoreyShape shape, Set<Wall> measuredLeft,
        List<Dimension> outside, Map<DimensionKey, Dimension> dimensions,
        Optional<StoreyShape> underlay, PlanInk ink, Lettering lettering, LengthFormat format, Optional<Length> grid,
        PlanTrouble trouble, Optional<LayoutOutcome> laid) {

    public PlanState {
        measuredLeft = Set.copyOf(measuredLeft);
        outside = List.copyOf(outside);
        dimensions = Collections.unmodifiableMap(new LinkedHashMap<>(dimensions));
    }

    /**
     * @param scale pixels of lengths
     * @return where points of the plan are on paper
     */
    public PlanPlace place(DiagramScale scale) {
        return PlanPlace.of(scale, corner, lettering);
    }

    /**
     * @param wall of the storey
     * @return whether the side without its dimension strings is on its left
     */
    public boolean isInsideLeft(WallShape wall) {
        return !measuredLeft.contains(wall.wall());
    }

    /**
     * @param dimensions some
     * @return the same by their keys, in their order
     */
    public static Map<DimensionKey, Dimension> byKey(List<Dimension> dimensions) {
        Map<DimensionKey, Dimension> found = new LinkedHashMap<>();
        dimensions.forEach(each -> found.putIfAbsent(DimensionKey.of(each), each));
        return found;
    }
}
