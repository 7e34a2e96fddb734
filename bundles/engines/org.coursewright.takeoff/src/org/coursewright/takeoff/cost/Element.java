package org.coursewright.takeoff.cost;

import java.util.Objects;

/**
 * An element of a building, as costs are sorted by.
 *
 * @param code such as {@code B2010}
 * @param title such as "Exterior Walls"
 */
public record Element(String code, String title) {

    public Element {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(title, "title");
    }
}
