package org.coursewright.core.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Findings;
import org.coursewright.measure.Length;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.model.building.BondRule;
import org.coursewright.model.catalogue.Catalogue;
import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.catalogue.Plant;
import org.coursewright.model.catalogue.PlantKind;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.estimate.Estimate;
import org.coursewright.model.project.Project;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Volume;
import org.coursewright.takeoff.cost.UnitConversion;

/**
 * The mixes of a project, worked out.
 *
 * @param sheets in the order of the catalogue, those that can be taken apart
 * @param findings what is wrong with materials and mixes
 */
public record MixSheets(List<MixSheet> sheets, List<Finding> findings) {

    /** Where no mixer has a capacity; common practice, no source. */
    private static final Volume USUAL_MIXER = Volume.of(Fraction.of(100), UnitCode.LITRE);

    public MixSheets {
        sheets = List.copyOf(sheets);
        findings = List.copyOf(findings);
    }

    /**
     * Reads a project, on its editing thread; nothing is laid for it.
     *
     * @param project not null, not changed
     * @return its mixes
     */
    public static MixSheets of(Project project) {
        Findings findings = new Findings();
        Optional<Catalogue> catalogue = Optional.ofNullable(project.getCatalogue());
        MixReader mixes = new MixReader(catalogue, findings);
        List<MixSheet> sheets = new ArrayList<>();
        for (MixDesign mix : catalogue.map(each -> List.copyOf(each.getMixDesigns())).orElse(List.of())) {
            mixes.find(mix).filter(brief -> brief.recipe().isPresent()).ifPresent(brief -> sheets.add(new MixWorker(
                    brief, mixer(catalogue), uses(project, mix), thinnestJoint(project), blocks(catalogue, mix))
                    .sheet()));
        }
        return new MixSheets(sheets, findings.gravestFirst());
    }

    private static MixWorker.Mixer mixer(Optional<Catalogue> catalogue) {
        return catalogue.stream().flatMap(each -> each.getPlant().stream()).filter(plant -> plant
                .getKind() == PlantKind.MIXER && plant.getCapacity() != null)
                .flatMap(plant -> litres(plant.getCapacity())
                        .map(volume -> new MixWorker.Mixer(name(plant), volume)).stream())
                .findFirst()
                .orElse(new MixWorker.Mixer("assumed mixer", USUAL_MIXER));
    }

    private static String name(Plant plant) {
        return Optional.ofNullable(plant.getMark()).orElse("mixer");
    }

    private static Optional<Volume> litres(Quantity capacity) {
        return UnitConversion.convert(capacity, UnitCode.LITRE).map(litres -> Volume.of(Fraction.of(litres.value()),
                UnitCode.LITRE)).filter(volume -> volume.cubes().signum() > 0);
    }

    private static List<String> uses(Project project, MixDesign mix) {
        List<String> uses = new ArrayList<>();
        Optional<Estimate> estimate = Optional.ofNullable(project.getEstimate());
        boolean rest = estimate.map(Estimate::getMortar).filter(mix::equals).isPresent();
        boolean first = estimate.map(Estimate::getFirstMortar).or(() -> estimate.map(Estimate::getMortar)).filter(
                mix::equals).isPresent();
        if (first) {
            uses.add("mortar of first courses");
        }
        if (rest) {
            uses.add("mortar of other courses");
        }
        Stream.ofNullable(project.getCatalogue()).flatMap(catalogue -> catalogue.getUnitTypes().stream()).filter(
                unit -> unit.getMix() == mix).forEach(unit -> uses.add("blocks " + unit.getMark()));
        Stream.ofNullable(project.getCatalogue()).flatMap(catalogue -> catalogue.getFinishTypes().stream()).filter(
                type -> type.getMix() == mix).forEach(type -> uses.add("plaster " + type.getMark()));
        return uses;
    }

    private static List<UnitType> blocks(Optional<Catalogue> catalogue, MixDesign mix) {
        return catalogue.stream().flatMap(each -> each.getUnitTypes().stream()).filter(unit -> unit.getMix() == mix
                && unit.getLength() != null && unit.getWidth() != null && unit.getHeight() != null && unit.getLength()
                        .signum() > 0
                && unit.getWidth().signum() > 0 && unit.getHeight().signum() > 0).toList();
    }

    private static Optional<Length> thinnestJoint(Project project) {
        Optional<BondRule> rule = Optional.ofNullable(project.getBondRule());
        return Stream.of(rule.map(BondRule::getBedLeast), rule.map(BondRule::getHeadLeast)).flatMap(Optional::stream)
                .reduce((one, other) -> one.isLessThan(other) ? one : other);
    }
}
