package org.coursewright.core.session;

/**
 * A place in a text file.
 *
 * @param line counted from 1, less than 1 for unknown
 * @param column counted from 1, less than 1 for unknown
 */
record Place(int line, int column) {

    static final Place UNKNOWN = new Place(0, 0);

    /** @return how the place is appended to the name of the file, empty if it is unknown */
    String text() {
        if (line < 1) {
            return "";
        }
        return column < 1 ? ", line " + line : ", line " + line + ", column " + column;
    }
}
