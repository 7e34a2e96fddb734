package org.coursewright.takeoff.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;

import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Volume;
import org.junit.jupiter.api.Test;

class BatchCardTest {

    private static final MixRecipe MORTAR = new MixRecipe("mortar", Measure.LOOSE_VOLUME, List.of(new MixPart(
            Ingredients.CEMENT, Fraction.ONE), new MixPart(Ingredients.SAND, Fraction.of(3))), Water.exactly(
                    Water.Basis.BINDER, Fraction.of(1, 2)),
            Fraction.ZERO);
    private static final Container BAG = new Container("bag", Measure.DRY_MASS, Fraction.of(25), Fraction.ONE);
    private static final Container SHOVEL = new Container("shovel", Measure.LOOSE_VOLUME, Fraction.of("0.005"),
            Fraction.ONE);

    /**
     * By hand: a bag is 25 ÷ 1506 m³ and yields 2.681284 times that, 44.51 L; a mixer of 150 L takes three. Sand is
     * 3 × 75 ÷ 1506 m³ or 29.88 shovels of 5 L, rounded to 30. Water is half of 75 kg.
     */
    @Test
    void batchIsOfWholeBagsAndShovels() {
        BatchCard card = BatchCard.of(MORTAR, litres(150), Map.of("cement", BAG, "sand", SHOVEL));
        assertThat(card.lines().get(0).rounded()).isEqualTo(Fraction.of(3));
        assertThat(card.lines().get(0).exact()).isEqualTo(Fraction.of(3));
        assertThat(card.lines().get(1).exact()).isEqualTo(Fraction.of(45 * 1000, 1506));
        assertThat(card.lines().get(1).rounded()).isEqualTo(Fraction.of(30));
        assertThat(decimal(card.lines().get(1).deviation())).isCloseTo(0.004, within(1e-9));
        assertThat(card.rounded().waterToAdd()).isEqualTo(Fraction.of("37.5"));
        assertThat(decimal(card.exact().yield().in(UnitCode.LITRE))).isCloseTo(133.53, within(0.01));
        // 0.12 shovels more, of 5 L with 1281 kg/m³ and particles of 2650 kg/m³, is 0.29 L
        assertThat(decimal(card.rounded().yield().in(UnitCode.LITRE))).isCloseTo(133.82, within(0.01));
    }

    @Test
    void smallMixerTakesHalfABagIfItMay() {
        Container half = new Container("bag", Measure.DRY_MASS, Fraction.of(25), Fraction.of(1, 2));
        BatchCard card = BatchCard.of(MORTAR, litres(40), Map.of("cement", half, "sand", SHOVEL));
        assertThat(card.lines().get(0).rounded()).isEqualTo(Fraction.of(1, 2));
        assertThat(card.lines().get(1).rounded()).isEqualTo(Fraction.of(5));
    }

    @Test
    void batchesForAVolumeAreRoundedUp() {
        BatchCard card = BatchCard.of(MORTAR, litres(150), Map.of("cement", BAG, "sand", SHOVEL));
        assertThat(card.batchesFor(litres(1000))).isEqualTo(8);
        assertThat(card.batchesFor(card.rounded().yield().times(Fraction.of(3)))).isEqualTo(3);
    }

    @Test
    void mixerTooSmallForOneBagIsReportedWithItsVolume() {
        assertThatThrownBy(() -> BatchCard.of(MORTAR, litres(40), Map.of("cement", BAG, "sand", SHOVEL)))
                .hasMessageContaining("40 L").hasMessageContaining("bag of cement");
    }

    @Test
    void ingredientRoundedToNothingIsReported() {
        Container loader = new Container("loader", Measure.LOOSE_VOLUME, Fraction.of(2), Fraction.ONE);
        assertThatThrownBy(() -> BatchCard.of(MORTAR, litres(150), Map.of("cement", BAG, "sand", loader)))
                .hasMessageContaining("loader of sand");
    }

    @Test
    void ingredientWithoutContainerIsReportedByName() {
        assertThatThrownBy(() -> BatchCard.of(MORTAR, litres(150), Map.of("cement", BAG))).hasMessageContaining("sand");
    }

    private static Volume litres(long litres) {
        return Volume.of(Fraction.of(litres), UnitCode.LITRE);
    }

    private static double decimal(Fraction fraction) {
        return fraction.toDecimal().doubleValue();
    }
}
