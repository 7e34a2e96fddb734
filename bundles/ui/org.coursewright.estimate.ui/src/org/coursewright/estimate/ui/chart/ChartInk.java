package org.coursewright.estimate.ui.chart;

import java.util.List;

import org.coursewright.diagram.ui.ink.Ink;
import org.eclipse.swt.graphics.Color;

/**
 * What charts are painted with. The fills are those of Okabe and Ito (Color Universal Design, 2008), which people with any kind
 * of colour vision can tell apart; their order is the legend's, so that they need not be.
 *
 * @param basic paper, words, lines
 */
public record ChartInk(Ink basic) {

    private static final List<Color> FILLS = List.of(new Color(0, 114, 178), new Color(230, 159, 0), new Color(0, 158,
            115), new Color(204, 121, 167), new Color(86, 180, 233), new Color(213, 94, 0), new Color(240, 228, 66));

    /**
     * @param index of a part, from 0
     * @return its fill; they begin again after the last
     */
    public Color fill(int index) {
        return FILLS.get(index % FILLS.size());
    }
}
