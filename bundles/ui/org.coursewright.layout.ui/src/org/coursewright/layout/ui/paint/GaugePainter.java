package org.coursewright.layout.ui.paint;

import org.coursewright.bond.Run;
import org.coursewright.layout.ui.face.FaceCourse;
import org.coursewright.layout.ui.face.RunJoint;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Writes the joint gauge over the middle of each run: how wide each of its joints is laid. Runs that are too small for the words
 * go without.
 *
 * @param painter of the wall
 */
public record GaugePainter(FacePainter painter) {

    private static final int PADDING = 3;

    /**
     * @param graphics on which the wall has been drawn
     * @param clip what has to be drawn
     */
    public void paint(Graphics graphics, Rectangle clip) {
        for (FaceCourse course : painter.drawing().courses()) {
            if (course.course().number() <= painter.upTo()) {
                course.runs().forEach(run -> paint(graphics, clip, course, run));
            }
        }
    }

    private void paint(Graphics graphics, Rectangle clip, FaceCourse course, Run run) {
        Rectangle box = painter.place().box(run.from(), run.to(), course.course().bottom(), course.top());
        if (box.intersects(clip)) {
            RunJoint.of(run).map(painter.format()::format).ifPresent(words -> write(graphics, box, words));
        }
    }

    private void write(Graphics graphics, Rectangle box, String words) {
        Dimension size = FigureUtilities.getTextExtents(words, graphics.getFont());
        if (size.width + 2 * PADDING > box.width || size.height > box.height) {
            return;
        }
        Rectangle chip = new Rectangle(box.x + (box.width - size.width) / 2, box.y + (box.height - size.height) / 2,
                size.width, size.height);
        graphics.setBackgroundColor(painter.ink().basic().paper());
        graphics.fillRectangle(chip.getExpanded(PADDING, 0));
        graphics.setForegroundColor(painter.ink().basic().accent());
        graphics.drawText(words, chip.getLocation());
    }
}
