package org.coursewright.exchange.sheet.layout;

import java.util.List;

import org.coursewright.exchange.sheet.page.Spot;
import org.coursewright.measure.Length;

/**
 * Puts a wall on paper.
 *
 * @param left x of the wall's outer start face (mm)
 * @param bottom y of the wall's base (mm)
 * @param scale the number after {@code 1:}
 */
record Projection(double left, double bottom, int scale) {

    double x(Length along) {
        return left + size(along);
    }

    double y(Length up) {
        return bottom + size(up);
    }

    /** @return a length on paper (mm) */
    double size(Length length) {
        return size(length, scale);
    }

    static double size(Length length, int scale) {
        return (double) length.units() / Length.UNITS_PER_MILLIMETRE / scale;
    }

    Spot at(Length along, Length up) {
        return new Spot(x(along), y(up));
    }

    List<Spot> box(Length from, Length to, Length bottomOfBox, Length top) {
        return List.of(at(from, bottomOfBox), at(to, bottomOfBox), at(to, top), at(from, top));
    }
}
