package org.coursewright.exchange.csv;

/** Counts lines that end with a line feed, a carriage return, or both. */
final class Lines {

    private Lines() {
    }

    /** @return number of the line that position {@code at} of the text is in, the first is 1 */
    static int numberAt(CharSequence text, int at) {
        int line = 1;
        for (int i = 0; i < at; i++) {
            if (endsLine(text, i)) {
                line++;
            }
        }
        return line;
    }

    /** @return whether the character at position {@code i} is the last one of its line */
    static boolean endsLine(CharSequence text, int i) {
        char c = text.charAt(i);
        return c == '\n' || c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n');
    }
}
