package org.coursewright.takeoff.mix;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.List;
import java.util.Objects;

import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;
import org.coursewright.takeoff.Volume;

/**
 * What blocks pressed on site take.
 *
 * @param block volume of one pressed block
 * @param dryDensity of the pressed block (kg/m³), greater than zero
 * @param looseRatio volume of loose mix by volume of block, at least 1: about 1.65 for manual presses of constant pressure,
 *        about 2 for hydraulic ones (published notes on stabilised soil blocks; measure your own)
 * @param stabiliser share of cement or lime
 * @param water by mass of all solids, zero or more
 * @param spoiled share pressed on top for spill and rejects, zero or more
 */
public record BlockMix(Volume block, Fraction dryDensity, Fraction looseRatio, StabiliserShare stabiliser,
        Fraction water, Fraction spoiled) {

    private static final String NOTES = "published notes on stabilised soil blocks";
    private static final Formula PRESSED = new Formula("block.pressed", "⌈blocks × (1 + spoiled)⌉",
            "common practice, no source");
    private static final Formula LOOSE = new Formula("block.looseMix", "pressed × block × looseRatio", NOTES);
    private static final Formula STABILISER = new Formula("block.stabiliser", "pressed × dryMass × ofTotal", NOTES);
    private static final Formula SOIL = new Formula("block.soil", "pressed × dryMass × (1 − ofTotal)", NOTES);
    private static final Formula WATER = new Formula("block.water", "pressed × dryMass × water", NOTES);

    public BlockMix {
        Objects.requireNonNull(stabiliser, "stabiliser");
        require(block.cubes().signum() > 0 && dryDensity.signum() > 0,
                "A block of %s m³ and %s kg/m³: both must be above zero.", block.in(UnitCode.CUBIC_METRE).toDecimal(),
                dryDensity.toDecimal());
        require(looseRatio.compareTo(Fraction.ONE) >= 0,
                "Loose mix is %s times the block: it must be at least 1, as pressing makes it smaller.", looseRatio
                        .toDecimal());
        require(water.signum() >= 0 && spoiled.signum() >= 0, "Water %s and spoiled %s: neither may be negative.", water
                .toDecimal(), spoiled.toDecimal());
    }

    /** @return dry mass of one block (kg), soil and stabiliser */
    public Fraction dryMass() {
        return block.in(UnitCode.CUBIC_METRE).times(dryDensity);
    }

    /** @return stabiliser in one block (kg) */
    public Fraction stabiliserMass() {
        return stabiliser.in(dryMass());
    }

    /** @return volume of loose mix for one block */
    public Volume looseMix() {
        return block.times(looseRatio);
    }

    /**
     * @param bag mass of stabiliser in a bag (kg)
     * @return how many blocks a bag makes
     * @throws ArithmeticException if the blocks have no stabiliser
     */
    public Fraction blocksFromBag(Fraction bag) {
        return bag.dividedBy(stabiliserMass());
    }

    /** @return blocks to press so that so many are good, rounded up */
    public long pressed(long blocks) {
        return Fraction.of(blocks).times(Fraction.ONE.plus(spoiled)).ceiling();
    }

    /**
     * @param blocks good blocks wanted, zero or more
     * @return blocks pressed, loose mix, stabiliser, soil and water, in that order
     */
    public List<Figure> figures(long blocks) {
        TraceInput mass = TraceInput.of("dryMass", dryMass());
        TraceInput share = TraceInput.of("ofTotal", stabiliser.ofTotal());
        TraceInput count = TraceInput.of("pressed", pressed(blocks));
        Fraction pressed = Fraction.of(pressed(blocks));
        Fraction total = dryMass().times(pressed);
        return List.of(figure(PRESSED, pressed, UnitCode.PIECE, TraceInput.of("blocks", blocks), TraceInput.of(
                "spoiled", spoiled)),
                figure(LOOSE, looseMix().times(pressed).in(UnitCode.CUBIC_METRE), UnitCode.CUBIC_METRE, count,
                        new TraceInput("block", block.toQuantity(UnitCode.CUBIC_METRE)), TraceInput.of("looseRatio",
                                looseRatio)),
                figure(STABILISER, stabiliser.in(total), UnitCode.KILOGRAM, count, mass, share),
                figure(SOIL, total.minus(stabiliser.in(total)), UnitCode.KILOGRAM, count, mass, share),
                figure(WATER, total.times(water), UnitCode.LITRE, count, mass, TraceInput.of("water", water)));
    }

    private static Figure figure(Formula formula, Fraction value, UnitCode unit, TraceInput... inputs) {
        return new Figure(formula.id(), Quantity.of(value.toDecimal(), unit), Trace.of(formula, inputs));
    }
}
