package org.coursewright.exchange.csv;

import org.coursewright.exchange.remark.Place;
import org.coursewright.exchange.remark.Remark;

/** Says that a file cannot be read as text or as a table at all, where it fails, and what to do. */
public final class UnreadableFileException extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient Place place;

    /**
     * @param place where it fails
     * @param message what is wrong and what to do, whole sentences
     */
    public UnreadableFileException(Place place, String message) {
        super(message);
        this.place = place;
    }

    /**
     * @param place where it fails
     * @param message what is wrong and what to do, whole sentences
     * @param cause the failure behind it
     */
    UnreadableFileException(Place place, String message, Throwable cause) {
        super(message, cause);
        this.place = place;
    }

    /** @return place and message */
    public Remark remark() {
        return new Remark(place, getMessage());
    }
}
