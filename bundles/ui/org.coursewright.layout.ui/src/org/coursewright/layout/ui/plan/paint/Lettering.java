package org.coursewright.layout.ui.plan.paint;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.swt.graphics.Font;

/** The letters of a plan, and how much room words take; measuring is slow, so it is done once for the same words. */
public final class Lettering {

    private final Font font;
    private final Function<String, Dimension> measure;
    private final Map<String, Dimension> sizes = new HashMap<>();

    /** @param font of all words, which somebody else disposes of */
    public Lettering(Font font) {
        this(font, words -> FigureUtilities.getTextExtents(words, font));
    }

    Lettering(Font font, Function<String, Dimension> measure) {
        this.font = font;
        this.measure = measure;
    }

    Font font() {
        return font;
    }

    Dimension size(String words) {
        return sizes.computeIfAbsent(words, measure).getCopy();
    }
}
