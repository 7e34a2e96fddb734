package org.coursewright.core.takeoff;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.core.validity.NumberValidity;
import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.estimate.Estimate;
import org.coursewright.model.project.Project;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.nesting.CutPlanner;
import org.coursewright.takeoff.quantities.BuildingTakeoff;
import org.coursewright.takeoff.quantities.JointFill;
import org.coursewright.takeoff.quantities.MortarRule;
import org.coursewright.takeoff.quantities.UnitRule;
import org.eclipse.emf.ecore.EObject;

/**
 * Which mortar goes where, what is wasted of it, and how much of the joints is filled.
 *
 * @param mortar rule of both mortars
 * @param firstMix mark of the mix of first courses, if one is chosen
 * @param restMix mark of the mix of other courses, if one is chosen
 */
public record TakeoffShares(MortarRule mortar, Optional<String> firstMix, Optional<String> restMix) {

    /** Usual for blocks that are hauled; common practice, no source. */
    static final Fraction USUAL_BREAKAGE = Fraction.of("0.05");
    /** Usual for cement mortar; common practice, no source. */
    static final Fraction USUAL_WASTE = Fraction.of("0.25");

    /** Without a choice of mixes the first course is told apart, since it is often laid in a richer mix. */
    private static final String FIRST = "mortar of first courses";
    private static final String REST = "mortar of other courses";

    static TakeoffShares of(Project project, Findings findings) {
        Optional<Estimate> estimate = Optional.ofNullable(project.getEstimate());
        Optional<MixDesign> rest = estimate.map(Estimate::getMortar).filter(TakeoffShares::isMarked);
        Optional<MixDesign> first = estimate.map(Estimate::getFirstMortar).filter(TakeoffShares::isMarked)
                .filter(mix -> !mix.getMark().equals(rest.map(MixDesign::getMark).orElse(""))).or(() -> rest);
        NumberValidity numbers = new NumberValidity(ElementReference.of(estimate.<EObject>map(each -> each).orElse(
                project), "estimate"), findings);
        JointFill fill = new JointFill(fill(numbers, "filled part of the bed joint", estimate.map(
                Estimate::getBedFillShare)),
                fill(numbers, "filled part of the head joint", estimate.map(
                        Estimate::getHeadFillShare)));
        MortarRule rule = new MortarRule(name(first, FIRST), waste(first, findings), name(rest, REST),
                waste(rest, findings), fill);
        return new TakeoffShares(rule, first.map(MixDesign::getMark), rest.map(MixDesign::getMark));
    }

    private static boolean isMarked(MixDesign mix) {
        return mix.getMark() != null && !mix.getMark().isBlank();
    }

    private static Fraction fill(NumberValidity numbers, String name, Optional<BigDecimal> share) {
        return numbers.share(name, share.orElse(null)).orElse(Fraction.ONE);
    }

    private static String name(Optional<MixDesign> mix, String otherwise) {
        return mix.map(MixDesign::getMark).map(mark -> "mortar " + mark).orElse(otherwise);
    }

    private static Fraction waste(Optional<MixDesign> mix, Findings findings) {
        return mix.flatMap(each -> new NumberValidity(ElementReference.of(each, "mix " + each.getMark()), findings)
                .share("waste", each
                        .getWasteShare()))
                .orElse(USUAL_WASTE);
    }

    BuildingTakeoff engine(Map<String, UnitRule> units) {
        return new BuildingTakeoff(mortar, units, new CutPlanner());
    }

    /** @return a share as people write it, such as {@code 5 %} */
    static String percent(Fraction share) {
        return share.times(100).toDecimal().toPlainString() + " %";
    }
}
