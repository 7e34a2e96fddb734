package org.coursewright.layout.ui.chain;

import org.coursewright.layout.ui.paint.FacePainter;
import org.coursewright.layout.ui.paint.FacePlace;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/** A wall beside the one that is shown: its pieces, its mark over it, and the line of the corner it is folded at. */
public final class ChainFigure extends Figure {

    private static final int OVER = 20;

    private final ChainLink link;
    private final FacePainter painter;
    private final int fold;

    /**
     * @param link to be shown
     * @param painter of the wall that is shown beside it
     */
    public ChainFigure(ChainLink link, FacePainter painter) {
        this.link = link;
        FacePlace place = painter.place();
        FacePlace own = new FacePlace(place.scale(), place.x(link.left()),
                place.foot() - place.scale().toPixels(link.base()));
        this.painter = new FacePainter(link.drawing(), own, painter.ink(), painter.format(),
                Math.min(painter.upTo(), link.drawing().courses().size()));
        boolean right = link.left().signum() > 0;
        Rectangle wall = this.painter.wallBounds();
        int gap = place.scale().toPixels(WallChain.FOLD) / 2;
        this.fold = right ? wall.x - gap : wall.right() + gap;
        setBounds(wall.getExpanded(gap + 1, OVER));
    }

    /** @return what is shown */
    public ChainLink link() {
        return link;
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        painter.paintWall(graphics, graphics.getClip(new Rectangle()));
        Rectangle wall = painter.wallBounds();
        String mark = link.wall().getMark();
        int width = FigureUtilities.getTextExtents(mark, graphics.getFont()).width;
        graphics.setForegroundColor(painter.ink().basic().text());
        graphics.drawText(mark, wall.x + (wall.width - width) / 2, getBounds().y);
        graphics.setForegroundColor(painter.ink().basic().faint());
        graphics.setLineStyle(Graphics.LINE_DASHDOT);
        graphics.drawLine(fold, getBounds().y, fold, getBounds().bottom());
        graphics.setLineStyle(Graphics.LINE_SOLID);
    }
}
