package org.coursewright.exchange.remark;

/** Somebody's text as a message shows it: on one line, in quotation marks, not too long. */
public final class Shown {

    private static final int LONGEST = 60;

    private Shown() {
    }

    /**
     * Quotes a text for a message.
     *
     * @param text anything that was read from a file or typed
     * @return the text in quotation marks, cut after 60 characters, control characters shown as an open box
     */
    public static String quoted(String text) {
        boolean fits = text.codePointCount(0, text.length()) <= LONGEST;
        String cut = fits ? text : text.substring(0, text.offsetByCodePoints(0, LONGEST)) + "\u2026";
        return '"' + cut.replaceAll("[\\p{Cntrl}\\u2028\\u2029]", "\u2423") + '"';
    }
}
