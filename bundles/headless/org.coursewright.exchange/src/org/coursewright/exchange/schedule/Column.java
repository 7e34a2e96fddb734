package org.coursewright.exchange.schedule;

/**
 * A column of a schedule.
 *
 * @param name as in the header, in small letters
 * @param mandatory whether a table without it is refused
 */
record Column(String name, boolean mandatory) {

    static Column mandatory(String name) {
        return new Column(name, true);
    }

    static Column optional(String name) {
        return new Column(name, false);
    }
}
