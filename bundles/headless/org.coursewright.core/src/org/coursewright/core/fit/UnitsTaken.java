package org.coursewright.core.fit;

/**
 * What a layout takes.
 *
 * @param pieces laid, whatever they are
 * @param whole units laid whole
 * @param cutUp whole units cut up for its cut pieces, as few as possible
 * @param specials stocked pieces of other lengths
 * @param cuts cut pieces
 */
public record UnitsTaken(long pieces, long whole, long cutUp, long specials, long cuts) {

    /** Nothing. */
    public static final UnitsTaken NONE = new UnitsTaken(0, 0, 0, 0, 0);

    /** @return whole units, laid or cut up */
    public long blocks() {
        return whole + cutUp;
    }

    /**
     * @param other not null
     * @return what both take together
     */
    public UnitsTaken plus(UnitsTaken other) {
        return new UnitsTaken(pieces + other.pieces, whole + other.whole, cutUp + other.cutUp,
                specials + other.specials, cuts + other.cuts);
    }

    /**
     * @param other not null
     * @return what this takes more than the other, negative where it takes less
     */
    public UnitsTaken minus(UnitsTaken other) {
        return new UnitsTaken(pieces - other.pieces, whole - other.whole, cutUp - other.cutUp,
                specials - other.specials, cuts - other.cuts);
    }
}
