package org.coursewright.layout.ui.plan.paint;

/**
 * Where a dimension string is drawn beside its face.
 *
 * @param distance pixels from the face to the line
 * @param turned whether lengths stand across the line, because they have no room along it
 * @param stubs whether the lines from the face are left out but for their ends, because they would cross words
 * @param silent whether the length is not written, because it would lie on something else
 */
public record DimensionRow(int distance, boolean turned, boolean stubs, boolean silent) {

    /** Nearest to the face, lengths along the line. */
    public static final DimensionRow FIRST = new DimensionRow(22, false, false, false);

    /** Pixels from row to row. */
    public static final int APART = 22;

    /** Pixels from a face within which its strings, and the lines towards them, are to be expected. */
    public static final int USUAL = 100;

    private static final int STUB = 12;

    /** @return the same without the length */
    DimensionRow silenced() {
        return new DimensionRow(distance, turned, stubs, true);
    }

    /** @return pixels from the face at which lines towards the string begin */
    int begin(int offFace) {
        return stubs ? Math.max(offFace, distance - STUB) : offFace;
    }
}
