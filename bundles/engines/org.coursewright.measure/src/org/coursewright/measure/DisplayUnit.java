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

    /**
     * The unit with a symbol.
     *
     * @param symbol {@code in} or {@code mm}, not null
     * @return that unit
     * @throws IllegalArgumentException if it is neither
     */
    public static DisplayUnit fromSymbol(String symbol) {
        for (DisplayUnit unit : values()) {
            if (unit.symbol.equals(symbol)) {
                return unit;
            }
        }
        throw new IllegalArgumentException("\"%s\" is not a unit for showing lengths: write in or mm."
                .formatted(symbol.length() <= 20 ? symbol : symbol.substring(0, 20)));
    }

    /** @return the unit symbol as written after a number and on the command line, {@code in} or {@code mm} */
    public String symbol() {
        return symbol;
    }
}
