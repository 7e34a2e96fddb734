package org.coursewright.exchange.sheet.layout;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.LengthRatio;

/**
 * How a sheet writes lengths: in feet and sixteenths of an inch, or in millimetres without the unit, which the title
 * block states once.
 *
 * @param unit the project's display unit
 */
public record SheetFormat(DisplayUnit unit) {

    private static final String MILLIMETRES = " mm";

    /** @return a dimension or a piece, to 1/16 in or 0.1 mm */
    public String length(Length length) {
        String text = LengthFormat.of(unit).format(length);
        return text.endsWith(MILLIMETRES) ? text.substring(0, text.length() - MILLIMETRES.length()) : text;
    }

    /** @return a length rounded to what {@link #length} shows, so that pieces that read alike count as alike */
    public Length shown(Length length) {
        return LengthFormat.of(unit).parse(length(length));
    }

    /** @return a mark on the pole or along the line, to 1/16 in or 1 mm */
    public String mark(Length length) {
        return unit == DisplayUnit.INCH
                ? length(length)
                : length(Length.ofMillimetres(
                        Math.floorDiv(length.units() * 2 + Length.UNITS_PER_MILLIMETRE, 2
                                * Length.UNITS_PER_MILLIMETRE)));
    }

    /** @return the width of a joint, to 1/16 in or 0.1 mm */
    public String joint(LengthRatio joint) {
        return length(Rounding.nearest(joint.total(), 1, joint.count()));
    }

    /** @return how sentences write lengths, with their unit */
    public LengthFormat inSentences() {
        return LengthFormat.of(unit);
    }

    /** @return whether lengths are written in feet and inches */
    public boolean isInches() {
        return unit == DisplayUnit.INCH;
    }
}
