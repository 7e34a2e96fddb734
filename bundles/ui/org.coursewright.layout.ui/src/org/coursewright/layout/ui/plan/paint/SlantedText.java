package org.coursewright.layout.ui.plan.paint;

import org.coursewright.layout.ui.plan.shape.Heading;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Words along a line, to be read from below or from the right.
 *
 * @param words on one line
 * @param centre where their middle is
 * @param degrees by which they are turned counterclockwise, above -90 and up to 90
 * @param lettering of the plan
 */
public record SlantedText(String words, Point centre, double degrees, Lettering lettering) {

    static SlantedText along(Heading heading, String words, Point centre, Lettering lettering) {
        double degrees = heading.degrees();
        double upright = degrees > 90.5 && degrees <= 270.5 ? degrees - 180 : degrees > 270 ? degrees - 360 : degrees;
        return new SlantedText(words, centre, upright, lettering);
    }

    /** @return the upright box around the turned words */
    public Rectangle bounds() {
        Dimension size = lettering.size(words);
        double sine = Math.abs(Math.sin(Math.toRadians(degrees)));
        double cosine = Math.abs(Math.cos(Math.toRadians(degrees)));
        int width = (int) Math.ceil(size.width * cosine + size.height * sine) + 2;
        int height = (int) Math.ceil(size.width * sine + size.height * cosine) + 2;
        return new Rectangle(centre.x - width / 2, centre.y - height / 2, width, height);
    }

    void paint(Graphics graphics) {
        Dimension size = lettering.size(words);
        graphics.setFont(lettering.font());
        if (degrees == 0) {
            graphics.drawText(words, centre.x - size.width / 2, centre.y - size.height / 2);
            return;
        }
        graphics.pushState();
        graphics.translate(centre.x, centre.y);
        graphics.rotate((float) -degrees);
        graphics.drawText(words, -size.width / 2, -size.height / 2);
        graphics.popState();
    }
}
