package org.coursewright.model.edit;

import static java.util.Map.entry;

import java.util.Map;
import java.util.Optional;

import org.coursewright.measure.Length;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What single values an element may have, and why not others. */
public final class FeatureRules {

    /** By class and feature; what is not named here follows from its type. */
    private static final Map<String, ValueRule> RULES = Map.ofEntries(entry("Marked.mark", ValueRule.GIVEN_TEXT),
            entry("Project.name", ValueRule.GIVEN_TEXT), entry("Project.currency", ValueRule.CURRENCY),
            entry("Project.locale", ValueRule.LOCALE), entry("Project.inchDenominator", ValueRule.INCH_DENOMINATOR),
            entry("Site.latitude", ValueRule.LATITUDE), entry("Site.longitude", ValueRule.LONGITUDE),
            entry("Site.timeZone", ValueRule.TIME_ZONE), entry("Site.elevation", ValueRule.ANY),
            entry("Storey.elevation", ValueRule.POSITION), entry("Wall.fromX", ValueRule.POSITION),
            entry("Wall.fromY", ValueRule.POSITION), entry("Wall.toX", ValueRule.POSITION),
            entry("Wall.toY", ValueRule.POSITION), entry("Wall.base", ValueRule.POSITION),
            entry("Wall.moveTolerance", ValueRule.NOT_NEGATIVE), entry("Wall.sizeTolerance", ValueRule.NOT_NEGATIVE),
            entry("Wall.height", ValueRule.POSITIVE), entry("TopPoint.offset", ValueRule.NOT_NEGATIVE),
            entry("TopPoint.height", ValueRule.NOT_NEGATIVE), entry("Opening.offset", ValueRule.NOT_NEGATIVE),
            entry("Opening.width", ValueRule.POSITIVE), entry("Opening.sill", ValueRule.NOT_NEGATIVE),
            entry("Opening.height", ValueRule.POSITIVE), entry("Opening.moveTolerance", ValueRule.NOT_NEGATIVE),
            entry("Opening.sizeTolerance", ValueRule.NOT_NEGATIVE), entry("GradeBeam.top", ValueRule.POSITION),
            entry("BondBeam.bottom", ValueRule.POSITION), entry("Finish.from", ValueRule.NOT_NEGATIVE_OR_UNSET),
            entry("BondRule.leastLap", ValueRule.NOT_NEGATIVE_OR_UNSET),
            entry("BondRule.headLeast", ValueRule.NOT_NEGATIVE_OR_UNSET),
            entry("BondRule.headNominal", ValueRule.NOT_NEGATIVE_OR_UNSET),
            entry("BondRule.headMost", ValueRule.NOT_NEGATIVE_OR_UNSET),
            entry("BondRule.bedLeast", ValueRule.NOT_NEGATIVE_OR_UNSET),
            entry("BondRule.bedNominal", ValueRule.NOT_NEGATIVE_OR_UNSET),
            entry("BondRule.bedMost", ValueRule.NOT_NEGATIVE_OR_UNSET),
            entry("BondRule.fatJointReserve", ValueRule.NOT_NEGATIVE_OR_UNSET),
            entry("Pin.at", ValueRule.NOT_NEGATIVE), entry("Pin.course", ValueRule.ORDINAL),
            entry("UnitType.length", ValueRule.POSITIVE), entry("UnitType.width", ValueRule.POSITIVE),
            entry("UnitType.height", ValueRule.POSITIVE), entry("UnitType.mass", ValueRule.POSITIVE_NUMBER),
            entry("UnitType.specialLengths", ValueRule.POSITIVE_LENGTHS),
            entry("UnitType.kerf", ValueRule.NOT_NEGATIVE_OR_UNSET),
            entry("MixDesign.yieldShare", ValueRule.POSITIVE_NUMBER),
            entry("MixDesign.waterShare", ValueRule.SHARE), entry("MixDesign.stabiliserShare", ValueRule.SHARE),
            entry("Material.density", ValueRule.POSITIVE_NUMBER), entry("Material.wasteShare", ValueRule.SHARE),
            entry("MixDesign.airShare", ValueRule.SHARE), entry("MixDesign.leastWaterShare", ValueRule.SHARE),
            entry("MixDesign.mostWaterShare", ValueRule.SHARE), entry("MixDesign.wasteShare", ValueRule.SHARE),
            entry("MixDesign.dryDensity", ValueRule.POSITIVE_NUMBER),
            entry("MixDesign.looseShare", ValueRule.POSITIVE_NUMBER),
            entry("MixDesign.spoiledShare", ValueRule.SHARE), entry("UnitType.breakageShare", ValueRule.SHARE),
            entry("Material.compactedDensity", ValueRule.POSITIVE_NUMBER),
            entry("Material.particleDensity", ValueRule.POSITIVE_NUMBER),
            entry("Material.moistureShare", ValueRule.SHARE), entry("Material.absorbedShare", ValueRule.SHARE),
            entry("Material.bulkingShare", ValueRule.SHARE), entry("Plant.lostShare", ValueRule.SHARE),
            entry("Reinforcement.lines", ValueRule.COUNT), entry("Reinforcement.lap", ValueRule.NOT_NEGATIVE_OR_UNSET),
            entry("Estimate.bedFillShare", ValueRule.SHARE), entry("Estimate.headFillShare", ValueRule.SHARE),
            entry("Estimate.materialTaxShare", ValueRule.SHARE), entry("Estimate.labourTaxShare", ValueRule.SHARE),
            entry("Estimate.plantTaxShare", ValueRule.SHARE), entry("Estimate.haulageTaxShare", ValueRule.SHARE),
            entry("Estimate.overheadShare", ValueRule.SHARE), entry("Estimate.contingencyShare", ValueRule.SHARE),
            entry("Uncertainty.correlation", ValueRule.SHARE), entry("Uncertain.lowShare", ValueRule.POSITIVE_NUMBER),
            entry("Uncertain.highShare", ValueRule.POSITIVE_NUMBER),
            entry("HeightBand.from", ValueRule.NOT_NEGATIVE),
            entry("HeightBand.outputShare", ValueRule.POSITIVE_NUMBER),
            entry("Task.conditionsShare", ValueRule.POSITIVE_NUMBER), entry("Task.learningShare", ValueRule.SHARE),
            entry("Task.learningRepetition", ValueRule.POSITIVE_NUMBER),
            entry("Task.learningPlateau", ValueRule.ORDINAL),
            entry("MixPart.parts", ValueRule.POSITIVE_NUMBER),
            entry("CoatingType.coverage", ValueRule.POSITIVE_NUMBER), entry("CoatingType.coats", ValueRule.ORDINAL),
            entry("FinishType.coats", ValueRule.ORDINAL), entry("CrewMember.count", ValueRule.ORDINAL),
            entry("Activity.workHours", ValueRule.POSITIVE_NUMBER), entry("TestPlan.specimens", ValueRule.ORDINAL));

    private FeatureRules() {
    }

    /**
     * @param owner of the value
     * @param feature of that owner
     * @param value wanted, null for none, a collection for a feature of many values
     * @return why it may not have that value, empty if it may
     */
    public static Optional<Refusal> refusal(EObject owner, EStructuralFeature feature, Object value) {
        if (!isOfType(feature, value)) {
            return Optional.of(Refusal.of("type", label(feature), ElementLabels.of(owner)));
        }
        ValueRule rule = ruleOf(feature);
        return rule.accepts(value)
                ? Optional.empty()
                : Optional.of(Refusal.of("value." + rule.name(), label(feature), ElementLabels.of(owner),
                        shown(owner, value)));
    }

    static ValueRule ruleOf(EStructuralFeature feature) {
        ValueRule named = RULES.get(feature.getEContainingClass().getName() + "." + feature.getName());
        if (named != null) {
            return named;
        }
        return feature.isMany() ? ValueRule.ANY : switch (feature.getEType().getName()) {
            case "EString" -> ValueRule.TEXT;
            case "Length" -> ValueRule.POSITIVE_OR_UNSET;
            case "EInt" -> ValueRule.COUNT;
            default -> ValueRule.ANY;
        };
    }

    private static boolean isOfType(EStructuralFeature feature, Object value) {
        if (feature.isMany()) {
            return value instanceof Iterable<?> values && areOfType(feature, values);
        }
        Class<?> type = feature.getEType().getInstanceClass();
        return value == null ? !type.isPrimitive() && !type.isEnum() : feature.getEType().isInstance(value);
    }

    private static boolean areOfType(EStructuralFeature feature, Iterable<?> values) {
        for (Object each : values) {
            if (!feature.getEType().isInstance(each)) {
                return false;
            }
        }
        return true;
    }

    private static String label(EStructuralFeature feature) {
        return PropertyDescriptors.labelOf(feature);
    }

    private static String shown(EObject owner, Object value) {
        if (value instanceof Length length) {
            return DisplayFormat.of(owner).formatExact(length);
        }
        return value == null ? EditTexts.of("value.none") : value.toString();
    }
}
