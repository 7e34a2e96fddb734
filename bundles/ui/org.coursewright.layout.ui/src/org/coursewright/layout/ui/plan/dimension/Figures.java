package org.coursewright.layout.ui.plan.dimension;

import org.coursewright.layout.ui.plan.dimension.Dimension.Kind;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;

/**
 * How lengths are written on a plan. Millimetres stand as plain figures, which take half the room; lengths over all name the
 * unit. This is how ISO 129-1 has drawings dimensioned: the symbol may be left out where the drawing names the unit (from
 * memory).
 *
 * @param format of lengths elsewhere
 */
public record Figures(LengthFormat format) {

    /**
     * @param dimension of the plan
     * @return what is written beside its line
     */
    public String of(Dimension dimension) {
        return dimension.kind() == Kind.OVERALL ? format.format(dimension.length()) : of(dimension.length());
    }

    /**
     * @param length beside others of the same unit
     * @return its figures
     */
    public String of(Length length) {
        String text = format.format(length);
        return format.unit() == DisplayUnit.MILLIMETRE ? text.substring(0, text.indexOf(' ')) : text;
    }
}
