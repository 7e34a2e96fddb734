package org.coursewright.measure;

/** Says that a text is no length, what is wrong with it, and what would be one. */
public final class LengthFormatException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private static final int SHOWN = 60;

    private final String text;
    private final String reason;

    /**
     * @param text what was to be read, not null
     * @param reason what is wrong and what would be right, a clause without a full stop
     */
    public LengthFormatException(String text, String reason) {
        this(text, reason, null);
    }

    /**
     * @param text what was to be read, not null
     * @param reason what is wrong and what would be right, a clause without a full stop
     * @param cause the failure behind it, or null if there is none
     */
    public LengthFormatException(String text, String reason, Throwable cause) {
        super("\"" + shown(text) + "\" is not a length: " + reason + ".", cause);
        this.text = text;
        this.reason = reason;
    }

    /** @return what was to be read */
    public String text() {
        return text;
    }

    /** @return what is wrong, a clause without a full stop */
    public String reason() {
        return reason;
    }

    private static String shown(String text) {
        String oneLine = text.replaceAll("\\p{Cntrl}", "\u2423");
        return oneLine.length() <= SHOWN ? oneLine : oneLine.substring(0, SHOWN) + "\u2026";
    }
}
