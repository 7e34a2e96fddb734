package org.coursewright.takeoff.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

import org.coursewright.measure.Length;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Volume;
import org.coursewright.takeoff.mix.StabiliserShare.Convention;
import org.junit.jupiter.api.Test;

class BlockMixTest {

    private static final Volume BLOCK = Volume.of(Length.ofMillimetres(290), Length.ofMillimetres(140), Length
            .ofMillimetres(90));
    private static final Fraction BAG = Fraction.of(50);

    /** Handbook O004 and O005. */
    @Test
    void blockHasThePublishedMassAndLooseVolume() {
        BlockMix mix = mix(Convention.OF_SOIL);
        assertThat(mix.dryMass()).isEqualTo(Fraction.of("6.9426"));
        assertThat(mix.looseMix().in(UnitCode.LITRE)).isEqualTo(Fraction.of("6.0291"));
    }

    /** Handbook O006 and O007: the same 5 % makes 151.24 or 144.04 blocks out of a bag. */
    @Test
    void conventionOfTheShareDecidesHowFarABagGoes() {
        assertThat(mix(Convention.OF_SOIL).blocksFromBag(BAG).toDecimal().doubleValue()).isCloseTo(151.24, within(
                0.01));
        assertThat(mix(Convention.OF_TOTAL).blocksFromBag(BAG).toDecimal().doubleValue()).isCloseTo(144.04, within(
                0.01));
    }

    /** Handbook: 1000 blocks take 6.03 m³ of loose mix; with 10 % spoiled, 1100 are pressed. */
    @Test
    void figuresCountSpoiledBlocks() {
        List<Figure> figures = mix(Convention.OF_SOIL).figures(1000);
        assertThat(figures).extracting(Figure::item).containsExactly("block.pressed", "block.looseMix",
                "block.stabiliser", "block.soil", "block.water");
        assertThat(figures.get(0).quantity()).hasToString("1100 H87");
        assertThat(figures.get(1).quantity()).hasToString("6.63201 MTQ");
        // 1100 × 6.9426 kg, of which 1/21 is stabiliser and 20/21 soil; 10 % water
        assertThat(figures.get(2).quantity().value().doubleValue()).isCloseTo(363.66, within(0.01));
        assertThat(figures.get(3).quantity().value().doubleValue()).isCloseTo(7273.20, within(0.01));
        assertThat(figures.get(4).quantity()).hasToString("763.686 LTR");
    }

    @Test
    void conventionsConvertIntoEachOther() {
        StabiliserShare ofSoil = new StabiliserShare(Fraction.of(1, 20), Convention.OF_SOIL);
        StabiliserShare ofTotal = new StabiliserShare(Fraction.of(1, 21), Convention.OF_TOTAL);
        assertThat(ofSoil.in(Fraction.of(42))).isEqualTo(ofTotal.in(Fraction.of(42))).isEqualTo(Fraction.of(2));
    }

    @Test
    void shareOfTheTotalThatLeavesNoSoilIsRefused() {
        assertThatThrownBy(() -> new StabiliserShare(Fraction.ONE, Convention.OF_TOTAL)).hasMessageContaining(
                "less than 1");
    }

    @Test
    void looseMixSmallerThanTheBlockIsRefused() {
        assertThatThrownBy(() -> new BlockMix(BLOCK, Fraction.of(1900), Fraction.of("0.9"), new StabiliserShare(
                Fraction.ZERO, Convention.OF_SOIL), Fraction.ZERO, Fraction.ZERO)).hasMessageContaining("0.9");
    }

    private static BlockMix mix(Convention convention) {
        return new BlockMix(BLOCK, Fraction.of(1900), Fraction.of("1.65"), new StabiliserShare(Fraction.of("0.05"),
                convention), Fraction.of("0.10"), Fraction.of("0.10"));
    }
}
