package org.coursewright.exchange.sheet.layout;

import org.coursewright.bond.Piece;
import org.coursewright.exchange.sheet.page.Pen;
import org.coursewright.exchange.sheet.page.Shade;

/** How pieces look: cut ones hatched, specials with a heavy outline, and thin lines where the scale makes joints thin. */
final class PieceStyle {

    private static final double HATCH = 0.9;
    private static final int FINE_SCALE = 40;

    private PieceStyle() {
    }

    static void draw(Drawing drawing, Convex shape, Piece.Kind kind, int scale) {
        boolean isSmall = scale > FINE_SCALE;
        if (kind == Piece.Kind.SPECIAL) {
            Pen pen = isSmall ? Pen.MEDIUM : Pen.HEAVY;
            drawing.shape(shape.within(pen), pen, Shade.PAPER);
        } else {
            drawing.shape(shape.corners(), isSmall ? Pen.HAIR : Pen.FINE, Shade.PAPER);
        }
        if (kind == Piece.Kind.CUT) {
            shape.hatch(HATCH).forEach(drawing.marks()::add);
        }
    }
}
