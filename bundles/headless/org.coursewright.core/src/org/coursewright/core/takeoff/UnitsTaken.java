package org.coursewright.core.takeoff;

import java.util.Objects;

import org.coursewright.core.bond.UnitCount;

/**
 * What is taken of one unit type in one bond.
 *
 * @param unit mark of the unit type
 * @param bond {@code stretcher} or {@code header}
 * @param pieces as laid
 * @param cutUp whole units that the cut pieces come out of, kerf counted
 * @param proven whether no cutting takes fewer
 * @param ordered whole units with breakage
 * @param specialsOrdered stocked specials with breakage
 * @param lowPieces pieces in courses lower than the unit, cut along their bed too
 */
public record UnitsTaken(String unit, String bond, UnitCount pieces, long cutUp, boolean proven, long ordered,
        long specialsOrdered, long lowPieces) {

    public UnitsTaken {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(bond, "bond");
        Objects.requireNonNull(pieces, "pieces");
    }

    /** @return whole units that are laid or cut up, without breakage */
    public long consumed() {
        return pieces.whole() + cutUp;
    }
}
