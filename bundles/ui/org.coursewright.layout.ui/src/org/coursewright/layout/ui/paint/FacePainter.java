package org.coursewright.layout.ui.paint;

import java.util.Optional;

import org.coursewright.layout.ui.face.FaceCourse;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Insets;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Draws the face of a wall in one go, as twenty thousand figures would be slow.
 *
 * @param drawing of the wall
 * @param place where things are
 * @param ink to draw with
 * @param format of heights
 * @param upTo number of the highest course that is laid up
 */
public record FacePainter(FaceDrawing drawing, FacePlace place, FaceInk ink, LengthFormat format, int upTo) {

    /** Pixels around the wall: the story pole on the left, air elsewhere. */
    public static final Insets MARGIN = new Insets(24, StoryPole.WIDTH + 8, 24, 32);

    private static final int SELECTED_LINE = 3;

    /** @return pixels that the wall and its story pole cover */
    public Rectangle bounds() {
        Rectangle wall = wallBounds();
        return new Rectangle(wall.x - MARGIN.left, wall.y - MARGIN.top, wall.width + MARGIN.getWidth(),
                wall.height + MARGIN.getHeight());
    }

    /** @return pixels that the wall itself covers */
    public Rectangle wallBounds() {
        return place.box(Length.ZERO, drawing.face().length(), Length.ZERO, drawing.top().highest());
    }

    /**
     * @param graphics to draw on
     * @param clip what has to be drawn
     * @param selected a piece to be pointed out
     */
    public void paint(Graphics graphics, Rectangle clip, Optional<PlacedPiece> selected) {
        paintWall(graphics, clip);
        if (clip.bottom() > place.foot()) {
            new HandingPainter(this).paint(graphics);
        }
        if (clip.x < place.left() && !drawing.courses().isEmpty()) {
            new StoryPole(drawing, place, ink, format).paint(graphics, clip);
        }
        selected.filter(piece -> piece.course() <= upTo).ifPresent(piece -> paintSelected(graphics, piece));
    }

    /**
     * Draws the wall without what stands beside and under it.
     *
     * @param graphics to draw on
     * @param clip what has to be drawn
     */
    public void paintWall(Graphics graphics, Rectangle clip) {
        CoursePainter courses = new CoursePainter(place, ink, drawing.top());
        for (FaceCourse course : drawing.courses()) {
            boolean seen = place.y(course.top()) <= clip.bottom() && place.y(course.course().bottom()) >= clip.y;
            if (seen && course.course().number() <= upTo) {
                courses.paint(graphics, course, clip);
            }
        }
        ObstaclePainter obstacles = new ObstaclePainter(drawing, place, ink, upTo);
        obstacles.paintObstacles(graphics);
        paintOutline(graphics);
        obstacles.paintTrouble(graphics);
        new PinPainter(this).paint(graphics);
    }

    private void paintOutline(Graphics graphics) {
        PointList top = new PointList();
        top.addPoint(place.left(), place.foot());
        drawing.top().points().forEach(point -> top.addPoint(place.x(point.offset()), place.y(point.height())));
        top.addPoint(place.x(drawing.face().length()), place.foot());
        graphics.setForegroundColor(ink.basic().faint());
        graphics.drawPolygon(top);
    }

    private void paintSelected(Graphics graphics, PlacedPiece piece) {
        drawing.course(piece.course()).ifPresent(course -> {
            Rectangle box = place.box(piece.from(), piece.to(), course.unitBottom(), course.top());
            graphics.setForegroundColor(ink.basic().accent());
            graphics.setLineWidth(SELECTED_LINE);
            graphics.drawRectangle(box.x, box.y, box.width - 1, box.height - 1);
            graphics.setLineWidth(1);
        });
    }
}
