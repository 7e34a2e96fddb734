package org.coursewright.diagram.ui.picture;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Image;

/** Draws a whole page of lines, areas and words; says so when it is asked for images, gradients or arcs. */
abstract class LineArtGraphics extends Graphics {

    private final Rectangle page;

    /** @param page all that is drawn lies on it */
    LineArtGraphics(Rectangle page) {
        this.page = page;
    }

    /** The whole page is drawn. */
    @Override
    public Rectangle getClip(Rectangle clip) {
        return clip.setBounds(page);
    }

    @Override
    public void setClip(Rectangle clip) {
        // nothing is drawn beyond the page that would have to be cut off
    }

    @Override
    public void clipRect(Rectangle clip) {
        // as above
    }

    @Override
    public boolean getXORMode() {
        return false;
    }

    @Override
    public void setXORMode(boolean wanted) {
        // not known to SVG
    }

    @Override
    public void dispose() {
        // holds nothing
    }

    @Override
    public void drawArc(int x, int y, int width, int height, int offset, int length) {
        throw notDrawn();
    }

    @Override
    public void fillArc(int x, int y, int width, int height, int offset, int length) {
        throw notDrawn();
    }

    @Override
    public void drawFocus(int x, int y, int width, int height) {
        throw notDrawn();
    }

    @Override
    public void drawImage(Image image, int x, int y) {
        throw notDrawn();
    }

    @Override
    public void drawImage(Image image, int x1, int y1, int w1, int h1, int x2, int y2, int w2, int h2) {
        throw notDrawn();
    }

    @Override
    public void fillGradient(int x, int y, int width, int height, boolean vertical) {
        throw notDrawn();
    }

    @Override
    public void fillString(String text, int x, int y) {
        throw notDrawn();
    }

    @Override
    public void fillText(String text, int x, int y) {
        throw notDrawn();
    }

    private static UnsupportedOperationException notDrawn() {
        return new UnsupportedOperationException("Pictures of this kind hold lines, areas and words only.");
    }
}
