package org.coursewright.exchange.sheet;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Length;

/**
 * How sheets are made.
 *
 * @param scale the wanted scale as the number after {@code 1:}, or empty for the largest standard scale that fits
 * @param lineOffset how far the mason's line stands off the face, zero or more
 * @param date what is printed as the date, empty for none
 */
public record SheetSettings(Optional<Integer> scale, Length lineOffset, Optional<String> date) {

    /** Usual stand-off of the line: 3/16 in (common practice, no source). */
    public static final Length USUAL_LINE_OFFSET = Length.ofInchFraction(3, 16);

    /** No wanted scale, the usual line, no date. */
    public static final SheetSettings USUAL = new SheetSettings(Optional.empty(), USUAL_LINE_OFFSET, Optional.empty());

    public SheetSettings {
        Objects.requireNonNull(scale, "scale");
        Objects.requireNonNull(lineOffset, "lineOffset");
        Objects.requireNonNull(date, "date");
    }
}
