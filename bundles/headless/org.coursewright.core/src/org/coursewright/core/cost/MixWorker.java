package org.coursewright.core.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import org.coursewright.measure.Length;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.InvalidTakeoffException;
import org.coursewright.takeoff.Volume;
import org.coursewright.takeoff.cost.UnitConversion;
import org.coursewright.takeoff.mix.BatchCard;
import org.coursewright.takeoff.mix.BatchLine;
import org.coursewright.takeoff.mix.BlockMix;
import org.coursewright.takeoff.mix.Container;
import org.coursewright.takeoff.mix.IngredientAmount;
import org.coursewright.takeoff.mix.Measure;
import org.coursewright.takeoff.mix.MixAmounts;
import org.coursewright.takeoff.mix.MixRecipe;
import org.coursewright.takeoff.mix.MortarRules;

/**
 * Works out one mix.
 *
 * @param mix with a recipe
 * @param mixer at hand
 * @param uses what it is for
 * @param joint thinnest that is allowed, if known
 * @param blocks unit types pressed of it, with dimensions
 */
record MixWorker(MixBrief mix, Mixer mixer, List<String> uses, Optional<Length> joint, List<UnitType> blocks) {

    private static final Volume CUBIC_METRE = Volume.of(Fraction.ONE, UnitCode.CUBIC_METRE);
    private static final Fraction LITRE = Fraction.of(1, 1000);

    /**
     * A mixer.
     *
     * @param name of it
     * @param holds volume of mix
     */
    record Mixer(String name, Volume holds) {
    }

    MixSheet sheet() {
        MixAmounts cubicMetre = mix.amountsFor(CUBIC_METRE);
        Optional<MixSheet.Batch> batch = Optional.empty();
        String remark = "";
        try {
            batch = Optional.of(batch());
        } catch (InvalidTakeoffException e) {
            remark = e.getMessage();
        }
        return new MixSheet(mix.mark(), uses, parts(cubicMetre), cubicMetre.water().toDecimal(), batch, blocks.stream()
                .findFirst().filter(unit -> mix.isPressable()).map(this::block), grain(), remark);
    }

    private static List<MixSheet.Part> parts(MixAmounts amounts) {
        IngredientAmount first = amounts.ingredients().get(0);
        Function<IngredientAmount, Fraction> loose = amount -> amount.in(Measure.LOOSE_VOLUME);
        return amounts.ingredients().stream().map(amount -> new MixSheet.Part(amount.ingredient().name(), loose.apply(
                amount).dividedBy(loose.apply(first)).toDecimal(), amount.dryMass().dividedBy(first.dryMass())
                        .toDecimal(),
                amount.dryMass().toDecimal(), loose.apply(amount).toDecimal())).toList();
    }

    private MixSheet.Batch batch() {
        MixRecipe recipe = mix.recipe().orElseThrow();
        Map<String, Container> containers = new HashMap<>();
        mix.materials().forEach(material -> containers.put(material.mark(), container(material)));
        Fraction yield = mix.oneRound().yield().cubes().dividedBy(recipe.oneRound().yield().cubes());
        BatchCard card = BatchCard.of(recipe, mixer.holds().times(Fraction.ONE.dividedBy(yield)), containers);
        MixAmounts rounded = card.rounded();
        return new MixSheet.Batch(mixer.name(), rounded.yield().times(yield).in(UnitCode.LITRE).toDecimal(), lines(card
                .lines()), rounded.leastWaterToAdd().toDecimal(), rounded.waterToAdd().toDecimal(),
                rounded
                        .mostWaterToAdd().toDecimal());
    }

    private static List<MixSheet.BatchPart> lines(List<BatchLine> card) {
        List<MixSheet.BatchPart> lines = new ArrayList<>();
        card.forEach(line -> lines.add(new MixSheet.BatchPart(line.ingredient().name(), line.container().name(), line
                .exact().toDecimal(), line.rounded().toDecimal(), line.deviation().toDecimal())));
        return lines;
    }

    /** A pack may be halved; what comes without packs is measured in litres. */
    private static Container container(MaterialBrief material) {
        Optional<Quantity> pack = material.pack();
        String name = pack
                .map(each -> "pack of " + each.value().toPlainString() + " " + each.unit().map(UnitCode::symbol)
                        .orElse(each.unitCode()))
                .orElse("litre");
        Optional<Fraction> mass = pack.flatMap(each -> in(each, UnitCode.KILOGRAM));
        Optional<Fraction> volume = pack.flatMap(each -> in(each, UnitCode.CUBIC_METRE));
        return mass.map(each -> new Container(name, Measure.MOIST_MASS, each, Fraction.of(1, 2))).or(() -> volume.map(
                each -> new Container(name, Measure.LOOSE_VOLUME, each, Fraction.of(1, 2)))).orElse(new Container(name,
                        Measure.LOOSE_VOLUME, LITRE, Fraction.ONE));
    }

    private static Optional<Fraction> in(Quantity quantity, UnitCode unit) {
        return UnitConversion.convert(quantity, unit).map(converted -> Fraction.of(converted.value()));
    }

    private MixSheet.Block block(UnitType unit) {
        BlockMix block = new PressUse(mix, Volume.of(unit.getLength(), unit.getWidth(), unit.getHeight()),
                new Resources()).blocks();
        MixRecipe recipe = mix.recipe().orElseThrow();
        Optional<BigDecimal> fromPack = mix.materials().stream().filter(material -> material.ingredient().filter(
                ingredient -> ingredient.binder()).isPresent()).findFirst().flatMap(MaterialBrief::pack).flatMap(
                        pack -> in(pack, UnitCode.KILOGRAM))
                .filter(pack -> block.stabiliserMass().signum() > 0).map(pack -> block.blocksFromBag(pack).toDecimal());
        return new MixSheet.Block(String.valueOf(unit.getMark()), block.dryMass().toDecimal(), block.stabiliserMass()
                .toDecimal(), block.stabiliser().share().toDecimal(), block.stabiliser().ofTotal().toDecimal(),
                block
                        .looseMix().in(UnitCode.LITRE).toDecimal(),
                litres(block, recipe.water().target()), litres(block,
                        recipe.water().least()),
                litres(block, recipe.water().most()), fromPack);
    }

    private static BigDecimal litres(BlockMix block, Fraction share) {
        return block.dryMass().times(share).toDecimal();
    }

    private Optional<MixSheet.Grain> grain() {
        boolean mortar = uses.stream().anyMatch(use -> use.startsWith("mortar"));
        Optional<Length> largest = mix.materials().stream().flatMap(material -> material.largestParticle().stream())
                .reduce((one, other) -> one.isLessThan(other) ? other : one);
        return joint.filter(each -> mortar).flatMap(thin -> largest.map(grain -> new MixSheet.Grain(grain, thin,
                MortarRules.fits(grain, thin))));
    }
}
