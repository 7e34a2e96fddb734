package org.coursewright.takeoff.nesting;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.TreeMap;

import org.coursewright.measure.Length;
import org.coursewright.measure.Money;
import org.coursewright.measure.Progress;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;

/**
 * Whether a special length pays against cutting it. Each piece is taken to need one cut.
 *
 * @param offer what it would cost
 * @param pieces how many are needed, at least one
 * @param unitsSaved whole units that need not be cut if the specials are made
 * @param cutting what cutting them costs: units and cuts
 * @param making what making them costs: set-up and specials
 * @param breakEven least number of pieces from which making costs no more than cutting, if units are saved in the same
 *        proportion; empty if making never pays
 */
public record MakeOrCut(SpecialOffer offer, long pieces, long unitsSaved, Money cutting, Money making,
        OptionalLong breakEven) {

    private static final Formula BREAK_EVEN = new Formula("cut.breakEven",
            "⌈setUp ÷ ((unitsSaved × unit + pieces × cut) ÷ pieces − special)⌉", "common practice, no source");

    public MakeOrCut {
        Objects.requireNonNull(offer, "offer");
        Objects.requireNonNull(cutting, "cutting");
        Objects.requireNonNull(making, "making");
        Objects.requireNonNull(breakEven, "breakEven");
    }

    /**
     * Compares by the units that cutting really takes: all pieces are nested with and without those of the special.
     *
     * @param stock what is cut
     * @param cuts all pieces to cut, those of the special's length among them
     * @param offer what a special costs
     * @param planner plans both
     * @param progress asked whether the answer is still wanted
     * @return the comparison
     */
    public static MakeOrCut compare(CutStock stock, SortedMap<Length, Long> cuts, SpecialOffer offer,
            CutPlanner planner, Progress progress) {
        long pieces = cuts.getOrDefault(offer.length(), 0L);
        SortedMap<Length, Long> others = new TreeMap<>(cuts);
        others.remove(offer.length());
        long saved = planner.plan(stock, cuts, progress).units() - planner.plan(stock, others, progress).units();
        // a plan that is not proven might take a unit more for fewer pieces
        return compare(offer, pieces, Math.max(0, saved));
    }

    /**
     * @param offer what a special costs
     * @param pieces how many are needed, at least one
     * @param unitsSaved whole units that cutting them takes, zero or more
     * @return the comparison
     */
    public static MakeOrCut compare(SpecialOffer offer, long pieces, long unitsSaved) {
        require(pieces >= 1, "No pieces of %s are cut: there is nothing to compare.", offer.length());
        require(unitsSaved >= 0, "Special of %s: %d units saved must not be negative.", offer.length(), unitsSaved);
        Money cutting = offer.unit().times(BigDecimal.valueOf(unitsSaved)).plus(
                offer.cut().times(BigDecimal.valueOf(pieces)));
        Money making = offer.setUp().plus(offer.special().times(BigDecimal.valueOf(pieces)));
        return new MakeOrCut(offer, pieces, unitsSaved, cutting, making, breakEven(offer, cutting, pieces));
    }

    private static OptionalLong breakEven(SpecialOffer offer, Money cutting, long pieces) {
        Fraction saving = Fraction.of(cutting.amount()).dividedBy(Fraction.of(pieces)).minus(
                Fraction.of(offer.special().amount()));
        if (saving.signum() <= 0) {
            return OptionalLong.empty();
        }
        return OptionalLong.of(Math.max(1, Fraction.of(offer.setUp().amount()).dividedBy(saving).ceiling()));
    }

    /** @return whether making costs less than cutting */
    public boolean makingPays() {
        return making.minus(cutting).amount().signum() < 0;
    }

    /** @return how the break-even was found */
    public Trace trace() {
        return Trace.of(BREAK_EVEN, price("setUp", offer.setUp()), TraceInput.of("unitsSaved", unitsSaved), price(
                "unit", offer.unit()), TraceInput.of("pieces", pieces), price("cut", offer.cut()),
                price("special",
                        offer.special()));
    }

    private static TraceInput price(String symbol, Money price) {
        return TraceInput.of(symbol, Fraction.of(price.amount()));
    }
}
