package org.coursewright.core.cost;

import java.util.Objects;
import java.util.OptionalLong;

import org.coursewright.measure.Length;
import org.coursewright.measure.Money;

/**
 * Whether having specials of one length pays against cutting them.
 *
 * @param unit mark of the unit type
 * @param bond {@code stretcher} or {@code header}
 * @param length of the pieces
 * @param stocked whether they are specials in the layout, and not cut
 * @param pieces how many there are
 * @param unitsSaved whole units that need not be cut up if they are specials, nested exactly with all other cut pieces
 * @param cutting direct cost of cutting them: units and cuts
 * @param making direct cost of having them: set-up and specials
 * @param breakEven least number of pieces from which having them costs no more, if it ever does
 * @param makingPays whether having them costs less
 * @param note what the price of the special is taken to be
 */
public record MakeOrCutLine(String unit, String bond, Length length, boolean stocked, long pieces, long unitsSaved,
        Money cutting, Money making, OptionalLong breakEven, boolean makingPays, String note) {

    public MakeOrCutLine {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(bond, "bond");
        Objects.requireNonNull(length, "length");
        Objects.requireNonNull(cutting, "cutting");
        Objects.requireNonNull(making, "making");
        Objects.requireNonNull(breakEven, "breakEven");
        Objects.requireNonNull(note, "note");
    }
}
