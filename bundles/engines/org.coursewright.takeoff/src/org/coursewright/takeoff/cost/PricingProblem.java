package org.coursewright.takeoff.cost;

import java.util.Objects;

/**
 * Why a line has no price.
 *
 * @param line its id
 * @param kind what is wrong, for sorting and filtering
 * @param message what is wrong, with the value, and what to do
 */
public record PricingProblem(String line, Kind kind, String message) {

    /** What is wrong. */
    public enum Kind {
        /** No rate for the resource. */
        NO_RATE,
        /** More than one rate for the resource. */
        SEVERAL_RATES,
        /** A price below zero. */
        NEGATIVE_RATE,
        /** The unit of the rate is none we know. */
        UNKNOWN_UNIT,
        /** The unit of the rate does not measure what the line counts. */
        UNIT_MISMATCH,
        /** The price is in another currency than the scenario. */
        CURRENCY_MISMATCH,
        /** A quantity below zero. */
        NEGATIVE_QUANTITY,
        /** A code that is none of the table of elements. */
        UNKNOWN_ELEMENT
    }

    public PricingProblem {
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(message, "message");
    }
}
