package org.coursewright.layout.ui.plan.paint;

/**
 * Where a dimension string is drawn beside its face.
 *
 * @param distance pixels from the face to the line
 * @param turned whether lengths stand across the line, because they have no room along it
 */
public record DimensionRow(int distance, boolean turned) {

    /** Nearest to the face, lengths along the line. */
    public static final DimensionRow FIRST = new DimensionRow(26, false);

    /** Pixels from row to row. */
    public static final int APART = 24;
}
