package org.coursewright.takeoff;

import java.util.Objects;

/**
 * How a figure is computed, and on whose authority.
 *
 * @param id stable name for looking up a title in the reader's language, such as {@code mortar.bed}
 * @param expression in the symbols of the inputs, such as {@code length × bed × thickness}
 * @param source a published source, or "geometry", or "common practice, no source"
 */
public record Formula(String id, String expression, String source) {

    public Formula {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(expression, "expression");
        Objects.requireNonNull(source, "source");
    }
}
