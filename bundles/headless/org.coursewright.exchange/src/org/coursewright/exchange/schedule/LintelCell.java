package org.coursewright.exchange.schedule;

import java.util.Locale;
import java.util.Optional;

import org.coursewright.exchange.remark.Shown;
import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.LengthRange;
import org.coursewright.measure.Length;

/** What a schedule says about a lintel. */
sealed interface LintelCell {

    /** Rests on so much masonry at each end where nothing is said: 12 in, typical in adobe (from memory, no source). */
    Length USUAL_BEARING = Length.ofInches(12);

    /** There is none. */
    record None() implements LintelCell {
    }

    /**
     * Its size is given.
     *
     * @param depth from top to bottom, or empty for one course
     * @param bearing on masonry at each end
     */
    record Sized(Optional<Length> depth, Length bearing) implements LintelCell {
    }

    /**
     * Its mark is given.
     *
     * @param mark of a lintel type
     */
    record Named(String mark) implements LintelCell {
    }

    /** Reads {@code none}, a bearing, {@code DEPTH x BEARING}, or a mark. */
    static LintelCell read(Cells cells, String column) {
        String text = cells.text(column);
        if (text.isEmpty() || text.toLowerCase(Locale.ROOT).equals("none")) {
            return new None();
        }
        return Character.isDigit(text.charAt(0)) ? sized(cells, column, text) : new Named(cells.mark(column));
    }

    private static LintelCell sized(Cells cells, String column, String text) {
        String[] parts = text.split("[xX\u00D7]", -1);
        if (parts.length > 2) {
            cells.wrong(column, "%s is no lintel: enter none, its bearing, depth x bearing, or a mark."
                    .formatted(Shown.quoted(text)));
            return new None();
        }
        Length bearing = cells.parsed(column, parts[parts.length - 1].strip(), LengthRange.WIDTH);
        Optional<Length> depth = parts.length == 1
                ? Optional.empty()
                : Optional.of(cells.parsed(column, parts[0].strip(), LengthRange.HEIGHT));
        return new Sized(depth, bearing);
    }
}
