package org.coursewright.takeoff;

import java.util.List;
import java.util.Objects;

/**
 * How a figure came about, so that it can be shown and worked again by hand.
 *
 * @param formula how it is computed
 * @param inputs what went in, in the order of the formula
 * @param elements what it was taken from, such as {@code W1} or {@code W1/3} for its third course; may be empty
 */
public record Trace(Formula formula, List<TraceInput> inputs, List<String> elements) {

    public Trace {
        Objects.requireNonNull(formula, "formula");
        inputs = List.copyOf(inputs);
        elements = List.copyOf(elements);
    }

    /** @return a trace that names no elements */
    public static Trace of(Formula formula, TraceInput... inputs) {
        return new Trace(formula, List.of(inputs), List.of());
    }

    /** @return the same, taken from these elements */
    public Trace from(List<String> origins) {
        return new Trace(formula, inputs, origins);
    }
}
