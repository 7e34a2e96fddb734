package org.coursewright.layout.ui.paint;

import org.coursewright.bond.Piece;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/** A small piece of drawing that a legend explains. */
@FunctionalInterface
public interface Sample {

    /** A lintel or a bond beam. */
    Sample BEARING = (graphics, ink, box) -> FaceSymbols.bearing(graphics, ink, box);

    /** The end of a wall that is met. */
    Sample OTHER = (graphics, ink, box) -> FaceSymbols.other(graphics, ink, box);

    /** A run that nothing fills. */
    Sample UNFILLABLE = (graphics, ink, box) -> FaceSymbols.unfillable(graphics, ink, box);

    /** Two joints that lap too little. */
    Sample SHORT_LAP = (graphics, ink, box) -> FaceSymbols.shortLap(graphics, ink, box.getCenter());

    /** A pin. */
    Sample PINNED = (graphics, ink, box) -> PinPainter.head(graphics, ink, box.getCenter());

    /**
     * @param kind of a piece
     * @return such a piece
     */
    static Sample piece(Piece.Kind kind) {
        return (graphics, ink, box) -> new PiecePainter(ink).paint(graphics, kind, box);
    }

    /**
     * @param graphics to draw on
     * @param ink to draw with
     * @param box to fill
     */
    void paint(Graphics graphics, FaceInk ink, Rectangle box);
}
