package org.coursewright.core.cost;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;

/** The mass of all that is brought to the site, by element. */
final class Haulage {

    /** Rates call it this. */
    static final String RESOURCE = "haulage";

    private static final Formula MASS = new Formula("haulage.mass", "Σ mass of what is brought to the site",
            "common practice, no source");

    private Haulage() {
    }

    static void addTo(Resources resources) {
        Map<String, Map<String, Fraction>> masses = new LinkedHashMap<>();
        resources.hauled().forEach(each -> masses.computeIfAbsent(each.element(), key -> new LinkedHashMap<>()).merge(
                each.resource(), each.mass(), Fraction::plus));
        masses.forEach((element, byResource) -> resources.add(RESOURCE, element, Work.HAULAGE, byResource.values()
                .stream().reduce(Fraction.ZERO, Fraction::plus), UnitCode.KILOGRAM,
                new Trace(MASS, byResource.entrySet()
                        .stream().map(each -> MixUse.kilograms(each.getKey(), each.getValue())).toList(),
                        List.of(
                                element))));
    }
}
