package org.coursewright.layout.ui.paint;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Where things of a wall are on paper.
 *
 * @param scale pixels of lengths
 * @param left pixels to the right at which the start face is
 * @param foot pixels down at which the base is
 */
public record FacePlace(DiagramScale scale, int left, int foot) {

    /**
     * A wall with its margin in the upper left corner, or in the middle of the height if that is greater.
     *
     * @param scale pixels of lengths
     * @param highest point of the wall above its base
     * @param height pixels that there are
     * @return where its parts are
     */
    public static FacePlace of(DiagramScale scale, Length highest, int height) {
        int wall = scale.toPixels(highest);
        int spare = Math.max(0, height - wall - FacePainter.MARGIN.getHeight()) / 2;
        return new FacePlace(scale, FacePainter.MARGIN.left, FacePainter.MARGIN.top + spare + wall);
    }

    /**
     * @param along the wall
     * @return pixels to the right
     */
    public int x(Length along) {
        return left + scale.toPixels(along);
    }

    /**
     * @param height above the wall's base
     * @return pixels down
     */
    public int y(Length height) {
        return foot - scale.toPixels(height);
    }

    /**
     * @param x pixels to the right
     * @return how far along the wall
     */
    public Length along(int x) {
        return scale.toLength(x - left);
    }

    /**
     * @param y pixels down
     * @return how high above the wall's base
     */
    public Length height(int y) {
        return scale.toLength(foot - y);
    }

    /**
     * @param from along the wall
     * @param to along the wall
     * @param bottom above its base
     * @param top above its base
     * @return the pixels between them
     */
    public Rectangle box(Length from, Length to, Length bottom, Length top) {
        return new Rectangle(x(from), y(top), x(to) - x(from), y(bottom) - y(top));
    }
}
