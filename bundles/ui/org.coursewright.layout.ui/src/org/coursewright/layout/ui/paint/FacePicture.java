package org.coursewright.layout.ui.paint;

import java.util.Optional;

import org.coursewright.diagram.ui.ink.Ink;
import org.coursewright.diagram.ui.picture.Picture;
import org.coursewright.diagram.ui.picture.PngFile;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;

/** The whole face of a wall as a picture on white paper, as large as its joints need to be seen. */
public final class FacePicture implements Picture {

    /** At this scale a pixel is 2 mm, so a 10 mm joint is five pixels wide. */
    private static final double WANTED = 1;

    private final FacePainter painter;

    /**
     * @param drawing of the wall
     * @param format of heights
     */
    public FacePicture(FaceDrawing drawing, LengthFormat format) {
        int longest = PngFile.LONGEST_SIDE - FacePainter.MARGIN.getWidth();
        Length side = drawing.top().highest().isGreaterThan(drawing.face().length())
                ? drawing.top().highest()
                : drawing.face().length();
        double zoom = Math.min(WANTED, DiagramScale.fitting(side, longest).zoom());
        painter = new FacePainter(drawing, FacePlace.of(new DiagramScale(zoom), drawing.top().highest(), 0),
                FaceInk.with(Ink.LIGHT), format,
                drawing.courses().size());
    }

    @Override
    public Dimension size() {
        return painter.bounds().getSize();
    }

    @Override
    public void paint(Graphics graphics) {
        Rectangle all = painter.bounds();
        graphics.translate(-all.x, -all.y);
        graphics.setBackgroundColor(painter.ink().basic().paper());
        graphics.fillRectangle(all);
        painter.paint(graphics, all, Optional.empty());
    }
}
