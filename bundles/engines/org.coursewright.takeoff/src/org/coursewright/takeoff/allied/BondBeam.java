package org.coursewright.takeoff.allied;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.List;
import java.util.Objects;

import org.coursewright.measure.Length;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.TraceInput;
import org.coursewright.takeoff.Volume;

/**
 * A reinforced concrete beam on a wall: bond beam or grade beam.
 *
 * @param mark of the beam or its wall
 * @param length greater than zero
 * @param width greater than zero
 * @param height greater than zero
 * @param bars in one line of steel, as long as the beam or longer for hooks
 * @param lines how many such lines run side by side, zero or more
 * @param waste share of concrete on top, zero or more
 */
public record BondBeam(String mark, Length length, Length width, Length height, BarRun bars, int lines,
        Fraction waste) {

    private static final Formula CONCRETE = new Formula("beam.concrete", "length × width × height × (1 + waste)",
            AlliedFormulas.GEOMETRY);
    private static final Formula FORMWORK = new Formula("beam.formwork", "2 × length × height",
            AlliedFormulas.GEOMETRY);
    private static final Formula BARS = new Formula("beam.bars", "lines × ⌈(run − lap) ÷ (stock − lap)⌉",
            AlliedFormulas.GEOMETRY);
    private static final Formula STEEL = new Formula("beam.steel", "lines × steel × massPerMetre",
            "ASTM A615 (mass, from memory)");

    public BondBeam {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(bars, "bars");
        require(length.signum() > 0 && width.signum() > 0 && height.signum() > 0,
                "Beam %s measures %s × %s × %s: give length, width and height above zero.", mark, length, width,
                height);
        require(lines >= 0 && waste.signum() >= 0, "Beam %s has %d lines of steel and waste %s: neither may be "
                + "negative.", mark, lines, waste.toDecimal());
    }

    /** @return concrete (m³, steel not taken off), formwork of both sides (m²), bars, and steel in place (kg) */
    public List<Figure> figures() {
        Fraction concrete = Volume.of(length, width, height).times(Fraction.ONE.plus(waste)).in(UnitCode.CUBIC_METRE);
        Fraction steel = AlliedFormulas.metres(bars.steel()).times(bars.bar().massPerMetre()).times(lines);
        TraceInput count = TraceInput.of("lines", lines);
        TraceInput run = TraceInput.of("length", length);
        return List.of(AlliedFormulas.figure(mark, CONCRETE, concrete, UnitCode.CUBIC_METRE, run, TraceInput.of("width",
                width), TraceInput.of("height", height), TraceInput.of("waste", waste)),
                AlliedFormulas.figure(mark, FORMWORK, AlliedFormulas.area(length, height).times(2),
                        UnitCode.SQUARE_METRE, run, TraceInput.of("height", height)),
                AlliedFormulas.figure(mark, BARS, Fraction.of(bars.bars()).times(lines), UnitCode.PIECE, count,
                        TraceInput.of("run", bars.length()), TraceInput.of("lap", bars.lap()), TraceInput.of("stock",
                                bars.stock())),
                AlliedFormulas.figure(mark, STEEL, steel, UnitCode.KILOGRAM, count, TraceInput.of("steel", bars
                        .steel()), TraceInput.of("massPerMetre", bars.bar().massPerMetre())));
    }
}
