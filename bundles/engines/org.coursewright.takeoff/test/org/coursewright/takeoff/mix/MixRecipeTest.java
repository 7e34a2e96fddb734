package org.coursewright.takeoff.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;

import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Volume;
import org.junit.jupiter.api.Test;

class MixRecipeTest {

    private static final Fraction POUND = Fraction.of("0.45359237");
    private static final Water WATER = Water.exactly(Water.Basis.BINDER, Fraction.of(1, 2));

    /**
     * The first worked example of ACI 211.1-91, from memory: 300 lb of water, 484 of cement (specific gravity 3.15), 1917 of
     * coarse aggregate (2.68) and 1318 of sand (2.64), all dry, with 1 % of air, make one cubic yard.
     */
    @Test
    void concreteOfThePublishedExampleYieldsACubicYard() {
        MixAmounts round = concrete(1318).oneRound();
        assertThat(decimal(round.yield().in(UnitCode.CUBIC_FOOT))).isCloseTo(27.0, within(0.02));
    }

    /**
     * The same example, with 1369 lb of sand as found there by mass: coarse aggregate with 2 % of moisture of which 0.5 % is
     * absorbed, sand with 6 % and 0.7 %; 199 lb of water remain to be added.
     */
    @Test
    void moistureOfAggregatesIsTakenOffTheWaterToAdd() {
        MixAmounts round = concrete(1369).oneRound();
        assertThat(decimal(round.waterToAdd().dividedBy(POUND))).isCloseTo(199, within(1.0));
        assertThat(decimal(round.ingredients().get(1).in(Measure.MOIST_MASS).dividedBy(POUND))).isCloseTo(1955, within(
                1.0));
        assertThat(decimal(round.ingredients().get(2).in(Measure.MOIST_MASS).dividedBy(POUND))).isCloseTo(1451, within(
                1.0));
    }

    /** By hand: 1506 kg ÷ 3150 + 3 × 1281 ÷ 2650 + 753 L of water = 0.478095 + 1.450189 + 0.753 m³. */
    @Test
    void partsByVolumeYieldTheirAbsoluteVolumes() {
        MixAmounts round = mortar(Ingredients.SAND).oneRound();
        assertThat(decimal(round.yield().in(UnitCode.CUBIC_METRE))).isCloseTo(2.681284, within(1e-6));
        assertThat(round.water()).isEqualTo(Fraction.of(753));
    }

    /** Two independent ways to a yield: absolute volume and the rule of 38 cubic feet for 27. */
    @Test
    void yieldOfOneToThreeAgreesWithRuleThirtyEight() {
        MixRecipe recipe = new MixRecipe("M", Measure.LOOSE_VOLUME, mortar(Ingredients.SAND).parts(), Water.exactly(
                Water.Basis.BINDER, Fraction.of("0.6")), Fraction.ZERO);
        Volume loose = Volume.of(Fraction.of(4), UnitCode.CUBIC_METRE);
        Fraction ratio = MortarRules.looseMaterials(recipe.oneRound().yield()).cubes().dividedBy(loose.cubes());
        assertThat(decimal(ratio)).isCloseTo(1.0, within(0.02));
    }

    /** Damp sand swells: three parts hold 3 × 1281 ÷ 1.25 = 3074.4 kg and bring 153.72 kg of water. */
    @Test
    void bulkingAndMoistureOfSandAreAllowedFor() {
        MixAmounts round = mortar(Ingredients.dampSand()).oneRound();
        assertThat(round.ingredients().get(1).dryMass()).isEqualTo(Fraction.of("3074.4"));
        assertThat(round.waterToAdd()).isEqualTo(Fraction.of("599.28"));
        assertThat(round.ingredients().get(1).in(Measure.LOOSE_VOLUME)).isEqualTo(Fraction.of(3));
    }

    @Test
    void wetSandWithTooMuchWaterGivesANegativeAmountToAdd() {
        Ingredient wet = new Ingredient("sand", false, Ingredients.SAND.density(), new Moisture(Fraction.of("0.30"),
                Fraction.ZERO, Fraction.ZERO));
        assertThat(mortar(wet).oneRound().waterToAdd().signum()).isNegative();
    }

    @Test
    void waterToAddHasARange() {
        Water range = new Water(Water.Basis.BINDER, Fraction.of("0.4"), Fraction.of("0.5"), Fraction.of("0.6"));
        MixAmounts round = new MixRecipe("M", Measure.DRY_MASS, List.of(part(Ingredients.CEMENT, 100)), range,
                Fraction.ZERO).oneRound();
        assertThat(round.leastWaterToAdd()).isEqualTo(Fraction.of(40));
        assertThat(round.waterToAdd()).isEqualTo(Fraction.of(50));
        assertThat(round.mostWaterToAdd()).isEqualTo(Fraction.of(60));
    }

    @Test
    void amountsForAVolumeAreTheRoundScaledExactly() {
        Random random = new Random(4);
        for (int i = 0; i < 100; i++) {
            Volume wanted = Volume.of(Fraction.of(1 + random.nextInt(1000), 1 + random.nextInt(50)),
                    UnitCode.LITRE);
            MixAmounts amounts = mortar(Ingredients.dampSand()).amountsFor(wanted);
            Fraction solid = amounts.ingredients().stream().map(amount -> amount.ingredient().absoluteVolume(amount
                    .dryMass())).reduce(Fraction.ZERO, Fraction::plus);
            assertThat(amounts.yield()).isEqualTo(wanted);
            assertThat(solid.plus(amounts.water().dividedBy(Fraction.of(1000)))).isEqualTo(wanted.in(
                    UnitCode.CUBIC_METRE));
        }
    }

    @Test
    void everyMeasureLeadsBackToTheSameMass() {
        for (Measure measure : Measure.values()) {
            Ingredient sand = Ingredients.dampSand();
            Fraction mass = sand.dryMass(Fraction.of(7, 3), measure);
            assertThat(sand.amount(mass, measure)).isEqualTo(Fraction.of(7, 3));
        }
    }

    @Test
    void figuresShowMassesVolumesAndWater() {
        List<Figure> figures = MixFigures.of(mortar(Ingredients.dampSand()).oneRound());
        assertThat(figures).extracting(Figure::item).containsExactly("cement", "cement", "sand", "sand", "water");
        assertThat(figures.get(2).quantity()).hasToString("3074.4 KGM");
        assertThat(figures.get(3).quantity()).hasToString("3 MTQ");
        assertThat(figures.get(4).quantity()).hasToString("599.28 LTR");
    }

    @Test
    void waterByBinderWithoutBinderIsRefused() {
        assertThatThrownBy(() -> new MixRecipe("mud", Measure.LOOSE_VOLUME, List.of(part(Ingredients.SAND, 1)), WATER,
                Fraction.ZERO)).hasMessageContaining("mud").hasMessageContaining("solids");
    }

    @Test
    void densitiesThatFallAreRefused() {
        assertThatThrownBy(() -> Density.of(1800, 1600, 2650)).hasMessageContaining("1800").hasMessageContaining(
                "rising");
    }

    private static MixRecipe mortar(Ingredient sand) {
        return new MixRecipe("mortar 1:3", Measure.LOOSE_VOLUME, List.of(part(Ingredients.CEMENT, 1), part(sand, 3)),
                WATER, Fraction.ZERO);
    }

    private static MixRecipe concrete(long sand) {
        Ingredient coarse = new Ingredient("coarse", false, Density.of(1600, 1600, 2680), new Moisture(Fraction.of(
                "0.02"), Fraction.of("0.005"), Fraction.ZERO));
        Ingredient fine = new Ingredient("sand", false, Density.of(1600, 1600, 2640), new Moisture(Fraction.of("0.06"),
                Fraction.of("0.007"), Fraction.ZERO));
        return new MixRecipe("concrete", Measure.DRY_MASS, List.of(pounds(Ingredients.CEMENT, 484), pounds(coarse,
                1917), pounds(fine, sand)), Water.exactly(Water.Basis.BINDER, Fraction.of(300, 484)), Fraction.of(
                        "0.01"));
    }

    private static MixPart pounds(Ingredient ingredient, long pounds) {
        return new MixPart(ingredient, POUND.times(pounds));
    }

    private static MixPart part(Ingredient ingredient, long parts) {
        return new MixPart(ingredient, Fraction.of(parts));
    }

    private static double decimal(Fraction fraction) {
        return fraction.toDecimal().doubleValue();
    }
}
