package org.coursewright.exchange.remark;

import java.util.Objects;

/**
 * One thing a reader has to say.
 *
 * @param place where it was found
 * @param message what is wrong or doubtful and what to do, whole sentences
 */
public record Remark(Place place, String message) {

    public Remark {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(message, "message");
    }

    /** @return place and message on one line */
    @Override
    public String toString() {
        return place + ": " + message;
    }
}
