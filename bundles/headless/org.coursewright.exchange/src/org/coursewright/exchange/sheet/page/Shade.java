package org.coursewright.exchange.sheet.page;

/** What fills a shape. */
public enum Shade {
    /** White, hiding what lies under it. */
    PAPER(255),
    /** A light grey: masonry of another wall. */
    LIGHT(236),
    /** A middle grey: lintels and beams. */
    MIDDLE(205);

    private final int grey;

    Shade(int grey) {
        this.grey = grey;
    }

    /** @return from 0 for black to 255 for white */
    public int grey() {
        return grey;
    }
}
