package org.coursewright.diagram.ui.ink;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;

/**
 * What a diagram is drawn with. Each pair of ink and paper has a contrast of 4.5 to 1 at least (WCAG 2.1, 1.4.3), faint
 * ink of 3 to 1 (1.4.11).
 *
 * @param paper behind everything
 * @param text words and figures
 * @param line outlines
 * @param faint lines that guide the eye
 * @param accent what is selected or dragged
 * @param warning what is in trouble
 */
public record Ink(Color paper, Color text, Color line, Color faint, Color accent, Color warning) {

    /** For screens with a light theme, and for pictures and print. */
    public static final Ink LIGHT = new Ink(new Color(255, 255, 255), new Color(32, 32, 32), new Color(72, 66, 60),
            new Color(140, 136, 130), new Color(0, 92, 175), new Color(176, 0, 32));

    /** For screens with a dark theme. */
    public static final Ink DARK = new Ink(new Color(38, 40, 42), new Color(232, 230, 226), new Color(190, 184, 176),
            new Color(130, 128, 124), new Color(120, 190, 255), new Color(255, 138, 138));

    private static final int MIDDLE_GREY = 128;

    /**
     * @param control that the diagram is in
     * @return the ink for its theme, told by whether its background is dark
     */
    public static Ink of(Control control) {
        return isDark(control.getBackground().getRGB()) ? DARK : LIGHT;
    }

    /** @return whether this ink is for a dark theme */
    public boolean isDark() {
        return isDark(paper.getRGB());
    }

    /** Weighs the colours as the eye does (ITU-R BT.601). */
    private static boolean isDark(RGB rgb) {
        return (299 * rgb.red + 587 * rgb.green + 114 * rgb.blue) / 1000 < MIDDLE_GREY;
    }
}
