package org.coursewright.layout.ui.plan.part;

import java.util.Optional;

import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;

/**
 * By what a dimension is known again after an edit has made it longer or shorter.
 *
 * @param wall whose face is measured
 * @param kind what it is measured between
 * @param opening at its end
 * @param far wall at its far end
 */
public record DimensionKey(Wall wall, Dimension.Kind kind, Optional<Opening> opening, Optional<Wall> far) {

    /**
     * @param dimension of a plan
     * @return its key
     */
    public static DimensionKey of(Dimension dimension) {
        return new DimensionKey(dimension.wall(), dimension.kind(), dimension.opening(), dimension.far());
    }
}
