package org.coursewright.exchange.sheet.page;

/** Which part of a text lies at its place, along the direction of reading. */
public enum Anchor {
    /** Its beginning. */
    START(0),
    /** Its middle. */
    MIDDLE(0.5),
    /** Its end. */
    END(1);

    private final double part;

    Anchor(double part) {
        this.part = part;
    }

    /** @return how much of the text lies before its place, 0 to 1 */
    public double part() {
        return part;
    }
}
