package org.coursewright.help.view;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.coursewright.help.page.Block;
import org.coursewright.help.page.PageAddress;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.custom.PaintObjectEvent;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GlyphMetrics;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;

/** Draws the pictures of a page where they stand in its text, made smaller if they are wider than the view. */
final class PagePictures {

    private static final int MARGIN = 28;
    private static final int LEAST_WIDTH = 160;

    private final StyledText widget;
    private final LocalResourceManager images;
    private final Map<Integer, Image> placed = new HashMap<>();

    PagePictures(StyledText widget) {
        this.widget = widget;
        images = new LocalResourceManager(JFaceResources.getResources(), widget);
        widget.addPaintObjectListener(this::paint);
    }

    /** Shows the pictures of a page that is shown now. */
    void show(PageText page, PageAddress address) {
        placed.clear();
        page.pictures().forEach((offset, picture) -> find(picture, address).ifPresent(image -> {
            placed.put(offset, image);
            widget.setStyleRange(place(offset, image));
        }));
    }

    private Optional<Image> find(Block.Picture picture, PageAddress address) {
        return address.follow(picture.file()).flatMap(Pages::find).map(ImageDescriptor::createFromURL)
                .map(images::create);
    }

    private StyleRange place(int offset, Image image) {
        Rectangle size = scaled(image);
        StyleRange style = new StyleRange();
        style.start = offset;
        style.length = PageText.PICTURE.length();
        style.metrics = new GlyphMetrics(size.height, 0, size.width);
        return style;
    }

    private Rectangle scaled(Image image) {
        Rectangle full = image.getBounds();
        int room = Math.max(LEAST_WIDTH, widget.getClientArea().width - MARGIN);
        return full.width <= room ? full : new Rectangle(0, 0, room, full.height * room / full.width);
    }

    private void paint(PaintObjectEvent event) {
        Image image = placed.get(event.style.start);
        if (image != null) {
            Rectangle full = image.getBounds();
            GlyphMetrics size = event.style.metrics;
            event.gc.drawImage(image, 0, 0, full.width, full.height, event.x,
                    event.y + event.ascent - size.ascent, size.width, size.ascent);
        }
    }
}
