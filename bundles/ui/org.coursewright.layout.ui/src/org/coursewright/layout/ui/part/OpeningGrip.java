package org.coursewright.layout.ui.part;

import org.coursewright.measure.Length;

/** What of an opening is taken hold of. */
public enum OpeningGrip {
    /** The whole opening: it moves, as wide as before. */
    OPENING,
    /** The jamb towards the wall's start: the other stays. */
    NEAR_JAMB,
    /** The jamb towards the wall's end: the other stays. */
    FAR_JAMB;

    /**
     * @param start where the opening is
     * @param by how far the grip is moved, less than zero towards the wall's start
     * @return where the opening is then; its width may be zero or less
     */
    public OpeningPlace moved(OpeningPlace start, Length by) {
        return switch (this) {
            case OPENING -> new OpeningPlace(start.offset().plus(by), start.width());
            case NEAR_JAMB -> new OpeningPlace(start.offset().plus(by), start.width().minus(by));
            case FAR_JAMB -> new OpeningPlace(start.offset(), start.width().plus(by));
        };
    }

    /**
     * @param from one place of the opening
     * @param to another
     * @return how far the grip is moved from one to the other
     */
    public Length between(OpeningPlace from, OpeningPlace to) {
        return this == FAR_JAMB ? to.end().minus(from.end()) : to.offset().minus(from.offset());
    }

    /**
     * @param place of the opening
     * @return the dimension that changes: how far the opening is from the wall's start, or how wide it is
     */
    public Length dimension(OpeningPlace place) {
        return this == OPENING ? place.offset() : place.width();
    }
}
