package org.coursewright.measure;

import static java.util.Map.entry;

import java.util.Map;

/** Puts the characters of a keyboard in the place of those that word processors make of them. */
final class PlainCharacters {

    private static final Map<Character, String> PLAIN = Map.ofEntries(entry('\u2018', "'"), entry('\u2019', "'"),
            entry('\u2032', "'"), entry('\u201c', "\""), entry('\u201d', "\""), entry('\u2033', "\""),
            entry('\u2010', "-"), entry('\u2011', "-"), entry('\u2012', "-"), entry('\u2013', "-"),
            entry('\u2212', "-"), entry('\u2044', "/"), entry('\u00bd', "1/2"), entry('\u00bc', "1/4"),
            entry('\u00be', "3/4"), entry('\u215b', "1/8"), entry('\u215c', "3/8"), entry('\u215d', "5/8"),
            entry('\u215e', "7/8"), entry('\u2153', "1/3"), entry('\u2154', "2/3"));

    private PlainCharacters() {
    }

    /** @return the text with plain quotes, dashes and slashes, and fractions apart from the whole number before */
    static String of(String text) {
        StringBuilder plain = new StringBuilder(text.length() + 4);
        for (char c : text.toCharArray()) {
            String instead = PLAIN.getOrDefault(c, isGap(c) ? " " : String.valueOf(c));
            boolean runsIntoNumber = instead.length() == 3 && !plain.isEmpty()
                    && isDigit(plain.charAt(plain.length() - 1));
            plain.append(runsIntoNumber ? " " : "").append(instead);
        }
        return plain.toString();
    }

    private static boolean isGap(char c) {
        return c == '\t' || Character.isSpaceChar(c);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
