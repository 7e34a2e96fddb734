package org.coursewright.measure;

/** How lengths are shown, and what a number typed without a unit means. */
public enum DisplayUnit {
    /** Feet, inches and fractions of an inch; a bare number is inches. */
    INCH("in"),
    /** Millimetres; a bare number is millimetres. */
    MILLIMETRE("mm");

    private final String symbol;

    DisplayUnit(String symbol) {
        this.symbol = symbol;
    }

    /** @return the unit symbol as written after a number and on the command line, {@code in} or {@code mm} */
    public String symbol() {
        return symbol;
    }
}
