package org.coursewright.diagram.ui.picture;

import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.widgets.Display;

/**
 * Prints a picture on one page, as large as it fits.
 *
 * @param picture to be printed
 */
public record PicturePrint(Picture picture) {

    /**
     * Prints it and lets go of the printer.
     *
     * @param printer to print on
     * @param name of the job
     * @return whether the printer took it
     */
    public boolean print(Printer printer, String name) {
        try {
            if (!printer.startJob(name) || !printer.startPage()) {
                return false;
            }
            page(printer);
            printer.endPage();
            printer.endJob();
            return true;
        } finally {
            printer.dispose();
        }
    }

    private void page(Printer printer) {
        Image image = new Image(printer, PaintedPicture.of(picture, Display.getCurrent()));
        GC gc = new GC(printer);
        try {
            Rectangle to = fitted(printer.getClientArea());
            gc.drawImage(image, 0, 0, picture.size().width, picture.size().height, to.x, to.y, to.width, to.height);
        } finally {
            gc.dispose();
            image.dispose();
        }
    }

    /**
     * @param page what can be printed on
     * @return where the picture goes: in the middle, as large as the page lets it be
     */
    public Rectangle fitted(Rectangle page) {
        Dimension size = picture.size();
        double scale = Math.min((double) page.width / size.width, (double) page.height / size.height);
        int width = (int) Math.floor(size.width * scale);
        int height = (int) Math.floor(size.height * scale);
        return new Rectangle(page.x + (page.width - width) / 2, page.y + (page.height - height) / 2, width, height);
    }
}
