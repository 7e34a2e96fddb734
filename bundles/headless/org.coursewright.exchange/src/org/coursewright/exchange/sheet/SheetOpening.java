package org.coursewright.exchange.sheet;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * An opening as it is set out.
 *
 * @param mark its mark
 * @param offset from the wall's outer start face to the near jamb
 * @param width between jambs
 * @param sill above the wall's base
 * @param height from sill to head
 */
public record SheetOpening(String mark, Length offset, Length width, Length sill, Length height) {

    public SheetOpening {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(offset, "offset");
        Objects.requireNonNull(width, "width");
        Objects.requireNonNull(sill, "sill");
        Objects.requireNonNull(height, "height");
    }

    /** @return position of the far jamb */
    public Length farJamb() {
        return offset.plus(width);
    }

    /** @return head above the wall's base */
    public Length head() {
        return sill.plus(height);
    }
}
