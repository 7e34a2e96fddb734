package org.coursewright.exchange.sheet.page;

/**
 * A place on the paper.
 *
 * @param x from the left edge (mm)
 * @param y from the bottom edge (mm)
 */
public record Spot(double x, double y) {
}
