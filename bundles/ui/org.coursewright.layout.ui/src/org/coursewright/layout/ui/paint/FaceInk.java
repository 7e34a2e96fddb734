package org.coursewright.layout.ui.paint;

import org.coursewright.bond.Piece;
import org.coursewright.diagram.ui.ink.Ink;
import org.eclipse.swt.graphics.Color;

/**
 * What a wall face is drawn with. Kinds of pieces differ in lightness and in what is drawn on them, not in hue alone.
 *
 * @param basic paper, words, lines
 * @param whole whole units
 * @param special stocked specials
 * @param cut cut pieces
 * @param mortar joints
 * @param other other masonry: ends of walls met
 * @param bearing lintels and bond beams
 */
public record FaceInk(Ink basic, Color whole, Color special, Color cut, Color mortar, Color other, Color bearing) {

    private static final FaceInk LIGHT = new FaceInk(Ink.LIGHT, new Color(226, 209, 184), new Color(152, 196, 204),
            new Color(238, 158, 96), new Color(250, 248, 244), new Color(233, 233, 233), new Color(168, 172, 184));
    private static final FaceInk DARK = new FaceInk(Ink.DARK, new Color(116, 102, 84), new Color(52, 104, 118),
            new Color(176, 96, 40), new Color(52, 50, 48), new Color(70, 72, 74), new Color(98, 104, 120));

    /**
     * @param basic ink of the theme
     * @return what goes with it
     */
    public static FaceInk with(Ink basic) {
        return basic.isDark() ? DARK : LIGHT;
    }

    Color of(Piece.Kind kind) {
        return switch (kind) {
            case WHOLE -> whole;
            case SPECIAL -> special;
            case CUT -> cut;
        };
    }
}
