package org.coursewright.exchange.csv;

import java.util.Arrays;
import java.util.Comparator;

/** What separates the cells of a table. */
public enum Separator {
    /** As RFC 4180 has it. */
    COMMA(',', "commas"),
    /** As spreadsheets write where the comma is the decimal mark. */
    SEMICOLON(';', "semicolons"),
    /** As pasted from a spreadsheet. */
    TAB('\t', "tabs");

    private final char character;
    private final String plural;

    Separator(char character, String plural) {
        this.character = character;
        this.plural = plural;
    }

    /** @return the character itself */
    public char character() {
        return character;
    }

    /** @return its name in messages */
    public String plural() {
        return plural;
    }

    /** @return the separator a header uses most often, a comma if it uses none */
    static Separator usedIn(String header) {
        return Arrays.stream(values()).max(Comparator.comparingLong((Separator s) -> s.countIn(header))
                .thenComparing(Comparator.<Separator>naturalOrder().reversed())).orElse(COMMA);
    }

    private long countIn(String header) {
        return header.chars().filter(c -> c == character).count();
    }
}
