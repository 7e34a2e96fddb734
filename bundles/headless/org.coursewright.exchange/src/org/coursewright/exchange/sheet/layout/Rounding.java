package org.coursewright.exchange.sheet.layout;

import org.coursewright.measure.Length;

/** Rounds fractions of lengths to the nearest 1/320 mm, a half up. */
final class Rounding {

    private Rounding() {
    }

    /** @return {@code total * times / parts} */
    static Length nearest(Length total, long times, long parts) {
        long product = Math.multiplyExact(total.units(), times);
        return Length.ofUnits(Math.floorDiv(Math.addExact(Math.multiplyExact(2, product), parts), 2 * parts));
    }
}
