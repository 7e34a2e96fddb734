package org.coursewright.layout.ui.plan.paint;

import org.coursewright.core.finding.Severity;
import org.coursewright.diagram.ui.ink.Ink;
import org.eclipse.swt.graphics.Color;

/**
 * What a plan is drawn with.
 *
 * @param basic paper, words, lines
 * @param masonry walls that are cut by the plan
 * @param underlay walls of the storey underneath
 * @param grid lines of the grid
 * @param dimension dimension strings
 * @param snap marks of what is snapped to
 */
public record PlanInk(Ink basic, Color masonry, Color underlay, Color grid, Color dimension, Color snap) {

    private static final PlanInk LIGHT = new PlanInk(Ink.LIGHT, new Color(226, 209, 184), new Color(222, 226, 232),
            new Color(238, 236, 232), new Color(64, 84, 112), new Color(196, 0, 128));
    private static final PlanInk DARK = new PlanInk(Ink.DARK, new Color(116, 102, 84), new Color(56, 62, 70),
            new Color(48, 50, 53), new Color(160, 186, 216), new Color(255, 122, 208));

    /**
     * @param basic ink of the theme
     * @return what goes with it
     */
    public static PlanInk with(Ink basic) {
        return basic.isDark() ? DARK : LIGHT;
    }

    Color of(Severity severity) {
        return severity == Severity.INVALID || severity == Severity.ERROR ? basic.warning() : basic.accent();
    }
}
