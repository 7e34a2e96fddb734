package org.coursewright.core.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.core.validity.NumberValidity;
import org.coursewright.measure.UnitCode;
import org.coursewright.model.catalogue.Catalogue;
import org.coursewright.model.catalogue.Material;
import org.coursewright.model.catalogue.MixBasis;
import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.catalogue.MixPart;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.InvalidTakeoffException;
import org.coursewright.takeoff.mix.Density;
import org.coursewright.takeoff.mix.Ingredient;
import org.coursewright.takeoff.mix.Measure;
import org.coursewright.takeoff.mix.MixRecipe;
import org.coursewright.takeoff.mix.Moisture;
import org.coursewright.takeoff.mix.Water;

/** Reads materials and mixes of a catalogue. */
final class MixReader {

    /** Loose mix for a constant-pressure manual press, by volume of block (published notes on stabilised soil blocks). */
    private static final Fraction USUAL_LOOSE = Fraction.of("1.65");
    /** Common practice, no source. */
    private static final Fraction USUAL_SPOILED = Fraction.of("0.05");
    /** Common practice, no source. */
    private static final Fraction USUAL_WASTE = Fraction.of("0.25");
    /** Quartz (kg/m³). */
    private static final Fraction USUAL_PARTICLE = Fraction.of(2650);

    private final Findings findings;
    private final Map<String, MaterialBrief> materials = new HashMap<>();
    private final Map<String, MixBrief> mixes = new HashMap<>();

    MixReader(Optional<Catalogue> catalogue, Findings findings) {
        this.findings = findings;
        catalogue.ifPresent(each -> {
            each.getMaterials().stream().filter(material -> material.getMark() != null).forEach(
                    material -> materials.put(material.getMark(), material(material)));
            each.getMixDesigns().stream().filter(mix -> mix.getMark() != null).forEach(
                    mix -> mixes.put(mix.getMark(), mix(mix)));
        });
    }

    Map<String, MaterialBrief> materials() {
        return materials;
    }

    Map<String, MixBrief> mixes() {
        return mixes;
    }

    Optional<MixBrief> find(MixDesign mix) {
        return Optional.ofNullable(mix).map(MixDesign::getMark).map(mixes::get);
    }

    private MaterialBrief material(Material material) {
        ElementReference element = ElementReference.of(material, "material " + material.getMark());
        NumberValidity numbers = new NumberValidity(element, findings);
        Optional<UnitCode> unit = Optional.ofNullable(material.getUnitCode()).flatMap(UnitCode::find);
        if (unit.isEmpty() && material.getUnitCode() != null) {
            findings.error("material.unit", element,
                    "Its unit code %s is not known. Use such as KGM, MTQ or BG.".formatted(material.getUnitCode()));
        }
        return new MaterialBrief(material.getMark(), unit, ingredient(material, numbers, element),
                Optional.ofNullable(material.getPack()).filter(pack -> pack.value().signum() > 0
                        && NumberValidity.isReckonable(pack.value())),
                or(numbers.share("waste", material.getWasteShare()), Fraction.ZERO),
                Optional.ofNullable(material.getLargestParticle()).filter(size -> size.signum() > 0),
                material.isDugOnSite());
    }

    private Optional<Ingredient> ingredient(Material material, NumberValidity numbers, ElementReference element) {
        Optional<Fraction> given = numbers.positive("density", material.getDensity());
        return given.flatMap(loose -> sound(element, () -> {
            Fraction compacted = or(numbers.positive("compacted density", material.getCompactedDensity()), loose);
            Fraction particle = or(numbers.positive("particle density", material.getParticleDensity()),
                    USUAL_PARTICLE.compareTo(compacted) < 0 ? compacted : USUAL_PARTICLE);
            return new Ingredient(material.getMark(), material.isBinder(), new Density(loose, compacted, particle),
                    new Moisture(share(numbers, "moisture", material.getMoistureShare()),
                            share(numbers, "absorption", material.getAbsorbedShare()),
                            share(numbers, "bulking", material.getBulkingShare())));
        }));
    }

    private MixBrief mix(MixDesign mix) {
        ElementReference element = ElementReference.of(mix, "mix " + mix.getMark());
        NumberValidity numbers = new NumberValidity(element, findings);
        List<MaterialBrief> of = mix.getParts().stream().map(MixPart::getMaterial)
                .map(material -> Optional.ofNullable(material).map(Material::getMark).map(materials::get))
                .flatMap(Optional::stream).toList();
        return new MixBrief(mix.getMark(), recipe(mix, of, numbers, element), of,
                numbers.positive("yield", mix.getYieldShare()),
                or(numbers.share("waste", mix.getWasteShare()), USUAL_WASTE),
                numbers.positive("dry density", mix.getDryDensity()),
                or(numbers.positive("loose mix", mix.getLooseShare()), USUAL_LOOSE),
                or(numbers.share("spoiled share", mix.getSpoiledShare()), USUAL_SPOILED),
                numbers.share("stabiliser share", mix.getStabiliserShare()));
    }

    private Optional<MixRecipe> recipe(MixDesign mix, List<MaterialBrief> of, NumberValidity numbers,
            ElementReference element) {
        List<org.coursewright.takeoff.mix.MixPart> parts = new ArrayList<>();
        for (int i = 0; i < of.size(); i++) {
            Optional<Fraction> count = numbers.positive("number of parts", mix.getParts().get(i).getParts());
            Optional<Ingredient> ingredient = of.get(i).ingredient();
            count.ifPresent(each -> ingredient.ifPresent(what -> parts.add(
                    new org.coursewright.takeoff.mix.MixPart(what, each))));
        }
        if (parts.isEmpty() || parts.size() < mix.getParts().size()) {
            findings.warning("mix.parts", element, "It cannot be taken apart into materials, as it lacks parts or a "
                    + "loose density of one. It is counted as a whole.");
            return Optional.empty();
        }
        Fraction target = share(numbers, "water", mix.getWaterShare());
        return sound(element, () -> new MixRecipe(mix.getMark(), mix.getBasis() == MixBasis.MASS
                ? Measure.DRY_MASS
                : Measure.LOOSE_VOLUME, parts,
                new Water(Water.Basis.SOLIDS,
                        or(numbers.share("least water", mix.getLeastWaterShare()), target), target,
                        or(numbers.share("most water", mix.getMostWaterShare()), target)),
                share(numbers, "air", mix.getAirShare())));
    }

    private static Fraction share(NumberValidity numbers, String name, BigDecimal value) {
        return or(numbers.share(name, value), Fraction.ZERO);
    }

    private static Fraction or(Optional<Fraction> given, Fraction otherwise) {
        return given.orElse(otherwise);
    }

    /** What the engine refuses is told of the element. */
    private <T> Optional<T> sound(ElementReference element, Supplier<T> made) {
        try {
            return Optional.of(made.get());
        } catch (InvalidTakeoffException e) {
            findings.error("mix.unsound", element, e.getMessage());
            return Optional.empty();
        }
    }
}
