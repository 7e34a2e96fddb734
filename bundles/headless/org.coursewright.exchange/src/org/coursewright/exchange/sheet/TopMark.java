package org.coursewright.exchange.sheet;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * A point of a wall's top.
 *
 * @param offset from the outer start face
 * @param height above the wall's base
 */
public record TopMark(Length offset, Length height) {

    public TopMark {
        Objects.requireNonNull(offset, "offset");
        Objects.requireNonNull(height, "height");
    }
}
