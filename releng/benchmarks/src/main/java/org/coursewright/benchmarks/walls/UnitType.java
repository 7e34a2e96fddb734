package org.coursewright.benchmarks.walls;

import java.util.List;

import org.coursewright.bond.JointRule;
import org.coursewright.bond.PieceStock;
import org.coursewright.measure.Length;

/**
 * A unit as it is laid: the module of its face, how thick the wall is, and what is stocked beside it. The least lap is a
 * quarter of the face; head joints are 3/8 to 3/4 in, 1/2 in aimed at (common practice, no source).
 *
 * @param face length of its face in quarters of an inch
 * @param thickness of the wall in quarters of an inch
 * @param shortest shortest piece in quarters of an inch
 * @param specials lengths stocked in quarters of an inch
 */
public record UnitType(int face, int thickness, int shortest, List<Integer> specials) {

    /** A unit of 14 by 10 in laid in stretcher bond. */
    public static final UnitType STRETCHER_14 = new UnitType(56, 40, 16, List.of());

    /** The same unit laid in header bond. */
    public static final UnitType HEADER_10 = new UnitType(40, 56, 12, List.of());

    /** A unit of 16 by 8 in with halves in stock. */
    public static final UnitType STRETCHER_16 = new UnitType(64, 32, 16, List.of(32));

    /** The 14 by 10 in unit with closers of 10 in in stock. */
    public static final UnitType CLOSERS_14 = new UnitType(56, 40, 16, List.of(40));

    /** The types hostile walls are drawn from. */
    public static final List<UnitType> HOSTILE = List.of(STRETCHER_14, HEADER_10, STRETCHER_16);

    /** @return so many quarters of an inch */
    static Length quarters(long count) {
        return Length.ofInchFraction(count, 4);
    }

    PieceStock stock() {
        return new PieceStock(quarters(face), specials.stream().map(UnitType::quarters).toList(),
                quarters(shortest), quarters(1), Length.ofInchFraction(1, 8));
    }

    JointRule rule() {
        return new JointRule(Length.ofInchFraction(face, 16), Length.ofInchFraction(3, 8), quarters(2), quarters(3));
    }
}
