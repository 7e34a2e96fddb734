package org.coursewright.bond.advice;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * A dimension changed.
 *
 * @param adjustable the dimension
 * @param by to the more or, negative, to the less
 */
public record Change(Adjustable adjustable, Length by) {

    public Change {
        Objects.requireNonNull(adjustable, "adjustable");
        Objects.requireNonNull(by, "by");
    }
}
