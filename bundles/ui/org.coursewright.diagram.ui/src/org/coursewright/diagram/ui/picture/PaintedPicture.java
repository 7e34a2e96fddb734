package org.coursewright.diagram.ui.picture;

import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;

/** Paints pictures into memory. */
final class PaintedPicture {

    private PaintedPicture() {
    }

    /** The pixels of a picture, painted in the user interface thread. */
    static ImageData of(Picture picture, Device device) {
        Image image = new Image(device, picture.size().width, picture.size().height);
        GC gc = new GC(image);
        SWTGraphics graphics = new SWTGraphics(gc);
        try {
            picture.paint(graphics);
            return image.getImageData();
        } finally {
            graphics.dispose();
            gc.dispose();
            image.dispose();
        }
    }
}
