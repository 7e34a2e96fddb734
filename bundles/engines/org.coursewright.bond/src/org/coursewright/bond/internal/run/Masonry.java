package org.coursewright.bond.internal.run;

import java.util.List;

import org.coursewright.bond.JointRule;
import org.coursewright.bond.PieceStock;
import org.coursewright.measure.Length;

/**
 * What one wall is laid of and what its joints must keep, in units of 1/320 mm.
 *
 * @param whole the whole unit along the wall
 * @param specials stocked lengths other than the whole unit, longest first
 * @param shortest shortest piece that may be cut
 * @param cutStep cut pieces are multiples of this
 * @param kerf what a cut takes away
 * @param lap least lap
 * @param least narrowest head joint
 * @param nominal head joint aimed at
 * @param most widest head joint
 */
public record Masonry(long whole, List<Long> specials, long shortest, long cutStep, long kerf, long lap, long least,
        long nominal, long most) {

    /** What is in stock, laid with joints as the rule asks. */
    public static Masonry of(PieceStock stock, JointRule rule) {
        List<Long> specials = stock.specials().stream().map(Length::units)
                .filter(length -> length != stock.whole().units()).distinct().sorted((a, b) -> Long.compare(b, a))
                .toList();
        return new Masonry(stock.whole().units(), specials, stock.shortestPiece().units(), stock.cutStep().units(),
                stock.kerf().units(), rule.leastLap().units(), rule.least().units(), rule.nominal().units(),
                rule.most().units());
    }

    /** Shortest piece that can be cut: on the cut step and no shorter than the shortest piece. */
    public long cutLeast() {
        return Math.multiplyExact(Math.floorDiv(shortest + cutStep - 1, cutStep), cutStep);
    }

    /** Longest piece that is cut: on the cut step and shorter than the whole unit. */
    public long cutMost() {
        return (whole - 1) / cutStep * cutStep;
    }

    /** The same with a cut step so coarse that no more than so many of them go into a unit. */
    public Masonry coarse(int mostSteps) {
        long steps = whole / cutStep;
        long coarser = steps <= mostSteps ? cutStep : Math.multiplyExact(cutStep, (steps + mostSteps - 1) / mostSteps);
        return new Masonry(whole, specials, shortest, coarser, kerf, lap, least, nominal, most);
    }

    /** Whether any piece may be cut to length. */
    public boolean canCut() {
        return cutLeast() <= cutMost();
    }

    /** Whether a piece may be cut to this length. */
    public boolean canCut(long length) {
        return length >= cutLeast() && length <= cutMost() && length % cutStep == 0;
    }

    /** Whether two pieces of this length come out of one unit. */
    public boolean halves(long cut) {
        return fitsBeside(cut, cut);
    }

    /** Whether pieces of these lengths come out of one unit together. */
    public boolean fitsBeside(long one, long other) {
        return one + other + kerf <= whole;
    }
}
