package org.coursewright.layout.ui.paint;

import org.coursewright.layout.ui.face.FaceCourse;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.measure.LengthFormat;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * The story pole beside the wall: the number of each course, and how high its top is above the wall's base. Where courses
 * are lower than a line of text, only every second, fifth or tenth is written.
 */
final class StoryPole {

    /** Pixels to the left of the wall that the pole takes. */
    static final int WIDTH = 140;

    private static final int[] EVERY = {1, 2, 5, 10, 20, 50, 100};
    private static final int AWAY = 16;
    private static final int TICK = 6;
    private static final int LONG_TICK = 10;
    private static final int NUMBER_WIDTH = 24;
    private static final int GAP = 6;

    private final FaceDrawing drawing;
    private final FacePlace place;
    private final FaceInk ink;
    private final LengthFormat format;

    StoryPole(FaceDrawing drawing, FacePlace place, FaceInk ink, LengthFormat format) {
        this.drawing = drawing;
        this.place = place;
        this.ink = ink;
        this.format = format;
    }

    void paint(Graphics graphics, Rectangle clip) {
        int pole = place.left() - AWAY;
        graphics.setForegroundColor(ink.basic().line());
        graphics.drawLine(pole, place.y(drawing.courses().get(drawing.courses().size() - 1).top()), pole, place.foot());
        int lineHeight = graphics.getFontMetrics().getHeight();
        int every = every(lineHeight);
        for (FaceCourse course : drawing.courses()) {
            int y = place.y(course.top());
            boolean written = course.course().number() % every == 0;
            if (y > clip.y - lineHeight && y < clip.bottom() + lineHeight) {
                graphics.setForegroundColor(ink.basic().line());
                graphics.drawLine(pole - (written ? LONG_TICK : TICK), y, pole, y);
            }
            if (written && y > clip.y - lineHeight && y < clip.bottom() + lineHeight) {
                write(graphics, course, y - lineHeight / 2);
            }
        }
    }

    private void write(Graphics graphics, FaceCourse course, int y) {
        graphics.setForegroundColor(ink.basic().text());
        writeEndingAt(graphics, Integer.toString(course.course().number()), place.left() - WIDTH + NUMBER_WIDTH, y);
        writeEndingAt(graphics, format.format(course.top()), place.left() - AWAY - LONG_TICK - GAP, y);
    }

    private static void writeEndingAt(Graphics graphics, String text, int x, int y) {
        int width = FigureUtilities.getTextExtents(text, graphics.getFont()).width;
        graphics.drawText(text, x - width, y);
    }

    private int every(int lineHeight) {
        double apart = ((double) place.foot() - place.y(drawing.courses().get(drawing.courses().size() - 1).top()))
                / drawing.courses().size();
        for (int every : EVERY) {
            if (apart * every >= lineHeight) {
                return every;
            }
        }
        return EVERY[EVERY.length - 1];
    }
}
