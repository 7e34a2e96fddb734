package org.coursewright.layout.ui.plan.part;

import java.util.List;
import java.util.Map;

import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.coursewright.layout.ui.plan.paint.DimensionRow;
import org.coursewright.layout.ui.plan.paint.SlantedText;
import org.coursewright.model.project.Marked;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Where the words of a plan are.
 *
 * @param marks of the walls and openings that have room for them
 * @param rows of the dimension strings
 * @param words boxes around the marks
 */
public record Wording(Map<Marked, SlantedText> marks, Map<Dimension, DimensionRow> rows, List<Rectangle> words) {

    /** No words at all. */
    public static final Wording NONE = new Wording(Map.of(), Map.of(), List.of());
}
