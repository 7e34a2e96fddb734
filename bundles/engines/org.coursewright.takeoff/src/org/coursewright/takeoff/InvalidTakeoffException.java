package org.coursewright.takeoff;

/** Says which input of a take-off contradicts itself, how, and what to change. */
public final class InvalidTakeoffException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** @param message what is wrong, where, with what value, and what to change */
    public InvalidTakeoffException(String message) {
        super(message);
    }

    /**
     * Refuses an input unless a condition holds.
     *
     * @param holds whether the input is sound
     * @param message as {@link String#format} takes it: what is wrong, where, and what to change
     * @param values what goes into the message
     * @throws InvalidTakeoffException if it does not hold
     */
    public static void require(boolean holds, String message, Object... values) {
        if (!holds) {
            throw new InvalidTakeoffException(message.formatted(values));
        }
    }
}
