package org.coursewright.core.cost;

import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.core.finding.Finding;
import org.coursewright.model.estimate.WorkKind;
import org.coursewright.takeoff.cost.MarkUp;

/**
 * What a price rests on besides quantities, copied out of the project.
 *
 * @param currency that prices are shown in
 * @param units by the mark of the unit type
 * @param materials by mark
 * @param mixes by mark
 * @param beams grade beams and bond beams
 * @param plaster on walls
 * @param site scaffold, ties and sealer
 * @param tasks by kind of work
 * @param rates as entered
 * @param markUp what comes on top
 * @param correlation by the mark of an uncertainty
 * @param findings what cannot be used, the gravest first
 */
record CostBrief(Currency currency, Map<String, UnitSupply> units, Map<String, MaterialBrief> materials,
        Map<String, MixBrief> mixes, List<BeamBrief> beams, List<PlasterBrief> plaster, SiteRules site,
        Map<WorkKind, TaskBrief> tasks, List<RateBrief> rates, MarkUp markUp, Map<String, Double> correlation,
        List<Finding> findings) {

    CostBrief {
        Objects.requireNonNull(currency, "currency");
        units = Map.copyOf(units);
        materials = Map.copyOf(materials);
        mixes = Map.copyOf(mixes);
        beams = List.copyOf(beams);
        plaster = List.copyOf(plaster);
        Objects.requireNonNull(site, "site");
        tasks = Map.copyOf(tasks);
        rates = List.copyOf(rates);
        Objects.requireNonNull(markUp, "markUp");
        correlation = Map.copyOf(correlation);
        findings = List.copyOf(findings);
    }

    /** @return the first rate of a resource, if there is one */
    Optional<RateBrief> rate(String resource) {
        return rates.stream().filter(rate -> rate.rate().resource().equals(resource)).findFirst();
    }
}
