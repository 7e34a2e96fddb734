package org.coursewright.exchange.table;

import java.math.BigDecimal;

import org.coursewright.measure.Length;

/**
 * What a length may be. The bounds are wider than any building and keep a slip of the pen from asking for millions of
 * courses.
 *
 * @param least smallest length allowed
 * @param most largest length allowed
 * @param words the range in words, for messages
 */
public record LengthRange(Length least, Length most, String words) {

    /** A coordinate on plan. */
    public static final LengthRange COORDINATE = metres(-1000, 1000, "at most 1000 m from the origin");

    /** A height above or below a datum. */
    public static final LengthRange LEVEL = metres(-1000, 1000, "at most 1000 m above or below");

    /** Height of a wall or a part of it. */
    public static final LengthRange HEIGHT = new LengthRange(Length.ofUnits(1), Length.ofMillimetres(60_000),
            "more than 0 and at most 60 m");

    /** A height that may be none. */
    public static final LengthRange RISE = metres(0, 60, "0 to 60 m");

    /** A position or width in a wall. */
    public static final LengthRange ALONG_WALL = metres(0, 500, "0 to 500 m");

    /** A width that must be some. */
    public static final LengthRange WIDTH = new LengthRange(Length.ofUnits(1), Length.ofMillimetres(500_000),
            "more than 0 and at most 500 m");

    /** A side of a masonry unit. */
    public static final LengthRange UNIT_SIDE = new LengthRange(Length.ofMillimetres(20), Length.ofMillimetres(2_000),
            "20 mm to 2 m");

    /** Part of a masonry unit. */
    public static final LengthRange PIECE = new LengthRange(Length.ofMillimetres(5), Length.ofMillimetres(2_000),
            "5 mm to 2 m");

    /** By how much joints keep apart. */
    public static final LengthRange LAP = metres(0, 2, "0 to 2 m");

    /** What pieces are rounded to. */
    public static final LengthRange CUT_STEP = new LengthRange(Length.ofMillimetresExact(new BigDecimal("0.1")),
            Length.ofMillimetres(100), "0.1 mm to 100 mm");

    /** A saw cut. */
    public static final LengthRange KERF = new LengthRange(Length.ZERO, Length.ofMillimetres(50), "0 to 50 mm");

    /** A mortar joint. */
    public static final LengthRange JOINT = new LengthRange(Length.ZERO, Length.ofMillimetres(100), "0 to 100 mm");

    private static LengthRange metres(long least, long most, String words) {
        return new LengthRange(Length.ofMillimetres(least * 1000), Length.ofMillimetres(most * 1000), words);
    }

    public boolean contains(Length length) {
        return !length.isLessThan(least) && !length.isGreaterThan(most);
    }

    @Override
    public String toString() {
        return words;
    }
}
