package org.coursewright.takeoff.nesting;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import org.coursewright.measure.Length;

/**
 * What pieces are cut from. Pieces of a unit fit if their lengths and the kerfs between them are no longer than the unit.
 * Whatever is left at the end is free: if it is narrower than the kerf, the blade takes all of it. If the end is trimmed, as
 * for a worn or raw end, one more kerf is lost.
 *
 * @param length of the whole unit, greater than zero
 * @param kerf lost between two pieces, zero or more
 * @param endTrimmed whether one more cut trims an end of every unit
 */
public record CutStock(Length length, Length kerf, boolean endTrimmed) {

    public CutStock {
        require(length.signum() > 0, "The unit to cut from is %s long: it must be above zero.", length);
        require(kerf.signum() >= 0, "The kerf is %s: it must not be negative.", kerf);
        require(!endTrimmed || length.isGreaterThan(kerf),
                "Trimming the end with a kerf of %s leaves nothing of a unit of %s.", kerf, length);
    }

    /** @return what the pieces of a unit may add up to, each counted with one kerf */
    public Length capacity() {
        return endTrimmed ? length : length.plus(kerf);
    }

    /** @return what a piece takes of the capacity: its length and one kerf */
    public Length sizeOf(Length piece) {
        return piece.plus(kerf);
    }
}
