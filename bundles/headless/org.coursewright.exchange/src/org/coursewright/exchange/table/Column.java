package org.coursewright.exchange.table;

/**
 * A column of a schedule.
 *
 * @param name as in the header, in small letters
 * @param mandatory whether a table without it is refused
 */
public record Column(String name, boolean mandatory) {

    public static Column mandatory(String name) {
        return new Column(name, true);
    }

    public static Column optional(String name) {
        return new Column(name, false);
    }
}
