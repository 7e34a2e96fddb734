package org.coursewright.exchange.sheet.page;

/**
 * An upright rectangle of paper.
 *
 * @param x left edge (mm)
 * @param y bottom edge (mm)
 * @param width (mm)
 * @param height (mm)
 */
public record Area(double x, double y, double width, double height) {

    /** @return x of the right edge (mm) */
    public double right() {
        return x + width;
    }

    /** @return y of the top edge (mm) */
    public double top() {
        return y + height;
    }

    /** @return whether the two share more than an edge */
    public boolean overlaps(Area other) {
        return x < other.right() && other.x < right() && y < other.top() && other.y < top();
    }

    /** @return whether {@code other} lies in this one, edges included */
    public boolean holds(Area other) {
        return x <= other.x && other.right() <= right() && y <= other.y && other.top() <= top();
    }
}
