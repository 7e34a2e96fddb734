package org.coursewright.diagram.ui.picture;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;

/**
 * A picture in a PNG file.
 *
 * @param file to make or to replace
 */
public record PngFile(Path file) {

    /** Longest side of a picture in pixels: beyond it, X11 ends the whole process. */
    public static final int LONGEST_SIDE = 32_000;

    /**
     * Paints a picture and writes it; in the user interface thread.
     *
     * @param picture with no side longer than {@link #LONGEST_SIDE}
     * @param device of the screen
     * @throws IOException if the file cannot be written
     */
    public void write(Picture picture, Device device) throws IOException {
        Dimension size = picture.size();
        if (Math.max(size.width, size.height) > LONGEST_SIDE || Math.min(size.width, size.height) < 1) {
            throw new IllegalArgumentException("A picture of %d by %d pixels cannot be made; its sides must be 1 to %d."
                    .formatted(size.width, size.height, LONGEST_SIDE));
        }
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[]{PaintedPicture.of(picture, device)};
        try (OutputStream out = Files.newOutputStream(file)) {
            loader.save(out, SWT.IMAGE_PNG);
        } catch (SWTException e) {
            throw new IOException("The picture cannot be written to %s: %s".formatted(file, e.getMessage()), e);
        }
    }
}
