package org.coursewright.layout.ui.paint;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Where things of a wall are on paper: the foot of its start face is at (0, 0), and it stands upwards from there.
 *
 * @param scale pixels of lengths
 */
public record FacePlace(DiagramScale scale) {

    /**
     * @param along the wall
     * @return pixels to the right
     */
    public int x(Length along) {
        return scale.toPixels(along);
    }

    /**
     * @param height above the wall's base
     * @return pixels down, so negative
     */
    public int y(Length height) {
        return -scale.toPixels(height);
    }

    /**
     * @param x pixels to the right
     * @return how far along the wall
     */
    public Length along(int x) {
        return scale.toLength(x);
    }

    /**
     * @param y pixels down
     * @return how high above the wall's base
     */
    public Length height(int y) {
        return scale.toLength(-y);
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
