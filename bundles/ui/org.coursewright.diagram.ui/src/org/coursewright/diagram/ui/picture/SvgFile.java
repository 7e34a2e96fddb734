package org.coursewright.diagram.ui.picture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * A picture in an SVG file: lines that stay sharp at every size.
 *
 * @param file to make or to replace
 */
public record SvgFile(Path file) {

    /**
     * Draws a picture and writes it; in the user interface thread, which measures words.
     *
     * @param picture of lines, areas and words
     * @throws IOException if the file cannot be written
     */
    public void write(Picture picture) throws IOException {
        Dimension size = picture.size();
        SvgGraphics graphics = new SvgGraphics(new Rectangle(0, 0, size.width, size.height));
        picture.paint(graphics);
        Files.writeString(file, """
                <?xml version="1.0" encoding="UTF-8"?>
                <svg xmlns="http://www.w3.org/2000/svg" width="%1$d" height="%2$d" viewBox="0 0 %1$d %2$d">
                %3$s</svg>
                """.formatted(size.width, size.height, graphics.elements()));
    }
}
