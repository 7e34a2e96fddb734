package org.coursewright.exchange.schedule;

/** Says where a text stops being a bond rule, why, and what would be one. */
public final class RuleTextException extends Exception {

    private static final long serialVersionUID = 1L;

    private final int position;

    /**
     * @param position the character at fault, the first is 1
     * @param message what is wrong and what would be right, whole sentences
     */
    RuleTextException(int position, String message) {
        super("Character %d: %s".formatted(position, message));
        this.position = position;
    }

    /** @return the character at fault, the first is 1 */
    public int position() {
        return position;
    }
}
