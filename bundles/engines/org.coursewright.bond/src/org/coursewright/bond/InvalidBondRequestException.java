package org.coursewright.bond;

/** Says which wall or meeting of a request contradicts itself, how, and what to change. */
public final class InvalidBondRequestException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** @param message what is wrong, where, and what to change */
    public InvalidBondRequestException(String message) {
        super(message);
    }
}
