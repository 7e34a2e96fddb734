package org.coursewright.measure;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A decimal number and a code as they are stored together, such as {@code 3.5 MTQ}.
 *
 * @param value the number
 * @param code what follows it
 */
record StoredDecimal(BigDecimal value, String code) {

    private static final int LONGEST = 60;

    /** Plain digits: an exponent would let ten characters stand for a number that fills the memory. */
    private static final Pattern FORM = Pattern.compile("(-?\\d+(?:\\.\\d+)?) +(\\S+)");

    /** @return what the text says, or empty if it is not of that form or longer than 60 characters */
    static Optional<StoredDecimal> read(String text) {
        String stripped = text.strip();
        var matcher = FORM.matcher(stripped);
        return stripped.length() <= LONGEST && matcher.matches()
                ? Optional.of(new StoredDecimal(new BigDecimal(matcher.group(1)), matcher.group(2)))
                : Optional.empty();
    }

    /** @return the text for a message, cut if it is long */
    static String shown(String text) {
        String oneLine = text.replaceAll("\\p{Cntrl}", "\u2423");
        return oneLine.length() <= LONGEST ? oneLine : oneLine.substring(0, LONGEST) + "\u2026";
    }
}
