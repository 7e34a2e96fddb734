package org.coursewright.layout.ui.plan.paint;

/**
 * Where a dimension string is drawn beside its face.
 *
 * @param distance pixels from the face to the line
 * @param turned whether lengths stand across the line, because they have no room along it
 * @param stubs whether the lines from the face are left out but for their ends, because they would cross words
 */
public record DimensionRow(int distance, boolean turned, boolean stubs) {

    /** Nearest to the face, lengths along the line. */
    public static final DimensionRow FIRST = new DimensionRow(22, false, false);

    /** Pixels from row to row. */
    public static final int APART = 22;

    private static final int STUB = 12;

    /** @return pixels from the face at which lines towards the string begin */
    int begin(int offFace) {
        return stubs ? Math.max(offFace, distance - STUB) : offFace;
    }
}
