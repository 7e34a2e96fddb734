package org.coursewright.core.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.core.validity.NumberValidity;
import org.coursewright.measure.Length;
import org.coursewright.measure.Money;
import org.coursewright.model.catalogue.CoatingType;
import org.coursewright.model.catalogue.UnitSource;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.estimate.Estimate;
import org.coursewright.model.estimate.EstimateFactory;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.estimate.Uncertainty;
import org.coursewright.model.project.Project;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.allied.Coating;
import org.coursewright.takeoff.cost.CostKind;
import org.coursewright.takeoff.cost.ElementTable;
import org.coursewright.takeoff.cost.MarkUp;

/** Copies out of a project what a price rests on. */
final class CostReader {

    private static final double USUAL_CORRELATION = 0.5;

    private final Project project;
    private final Estimate estimate;
    private final Findings findings = new Findings();

    private CostReader(Project project) {
        this.project = project;
        estimate = Optional.ofNullable(project.getEstimate()).orElseGet(EstimateFactory.eINSTANCE::createEstimate);
    }

    static CostBrief read(Project project) {
        return new CostReader(project).brief();
    }

    private CostBrief brief() {
        MixReader mixes = new MixReader(Optional.ofNullable(project.getCatalogue()), findings);
        AlliedReader allied = new AlliedReader(project, mixes, findings);
        Currency currency = currency();
        return new CostBrief(currency, units(mixes), mixes.materials(), mixes.mixes(), allied.beams(), allied.plaster(),
                site(), new TaskReader(findings).read(estimate.getTasks()),
                new RateReader(currency, ElementTable.uniformat2(), findings).read(estimate.getRates()), markUp(),
                correlation(), findings.gravestFirst());
    }

    /** The project's, else that of its first rate; XXX stands for none (ISO 4217). */
    private Currency currency() {
        Optional<Currency> given = Optional.ofNullable(project.getCurrency()).flatMap(this::known);
        return given.or(() -> estimate.getRates().stream().map(Rate::getPrice).filter(price -> price != null)
                .map(Money::currency).findFirst()).orElse(Currency.getInstance("XXX"));
    }

    private Optional<Currency> known(String code) {
        Optional<Currency> found = Currency.getAvailableCurrencies().stream()
                .filter(currency -> currency.getCurrencyCode().equals(code)).findFirst();
        if (found.isEmpty()) {
            findings.error("project.currency", ElementReference.of(project, "project"),
                    "Its currency %s is not known. Use an ISO 4217 code such as USD.".formatted(code));
        }
        return found;
    }

    private Map<String, UnitSupply> units(MixReader mixes) {
        Map<String, UnitSupply> units = new HashMap<>();
        List<UnitType> types = project.getCatalogue() == null ? List.of() : project.getCatalogue().getUnitTypes();
        for (UnitType type : types) {
            if (type.getMark() != null) {
                NumberValidity numbers = new NumberValidity(ElementReference.of(type, "unit type " + type.getMark()),
                        findings);
                units.put(type.getMark(), new UnitSupply(type.getSource() == UnitSource.MADE_ON_SITE, mixes.find(type
                        .getMix()), numbers.positive("mass", type.getMass())));
            }
        }
        return units;
    }

    private SiteRules site() {
        return new SiteRules(positive(estimate.getScaffoldReach()), positive(estimate.getScaffoldLift()),
                Math.max(0, estimate.getTieCourses()), Math.max(0, estimate.getTiesPerJoint()),
                Optional.ofNullable(estimate.getSealer()).flatMap(this::sealer));
    }

    private static Length positive(Length length) {
        return length == null || length.signum() <= 0 ? SiteRules.USUAL_LIFT : length;
    }

    private Optional<Coating> sealer(CoatingType type) {
        ElementReference element = ElementReference.of(type, "coating " + type.getMark());
        NumberValidity numbers = new NumberValidity(element, findings);
        String material = type.getMaterial() == null || type.getMaterial().getMark() == null
                ? String.valueOf(type.getMark())
                : type.getMaterial().getMark();
        Optional<Fraction> coverage = numbers.positive("coverage", type.getCoverage());
        if (coverage.isEmpty()) {
            findings.warning("coating.coverage", element,
                    "It needs a coverage in square metres a litre, else no sealer is counted.");
        }
        return coverage.map(each -> new Coating(material, each, Math.max(1, type.getCoats()), Fraction.ZERO));
    }

    private MarkUp markUp() {
        NumberValidity numbers = new NumberValidity(ElementReference.of(estimate, "estimate"), findings);
        Map<CostKind, BigDecimal> tax = new EnumMap<>(CostKind.class);
        tax.put(CostKind.MATERIAL, share(numbers, "tax on material", estimate.getMaterialTaxShare()));
        tax.put(CostKind.LABOUR, share(numbers, "tax on labour", estimate.getLabourTaxShare()));
        tax.put(CostKind.PLANT, share(numbers, "tax on plant", estimate.getPlantTaxShare()));
        tax.put(CostKind.HAULAGE, share(numbers, "tax on haulage", estimate.getHaulageTaxShare()));
        return new MarkUp(tax, share(numbers, "overhead", estimate.getOverheadShare()),
                share(numbers, "contingency", estimate.getContingencyShare()));
    }

    private static BigDecimal share(NumberValidity numbers, String name, BigDecimal value) {
        return numbers.share(name, value).isPresent() ? value : BigDecimal.ZERO;
    }

    private Map<String, Double> correlation() {
        Map<String, Double> correlation = new HashMap<>();
        List<Uncertainty> marked = new ArrayList<>(estimate.getUncertainties());
        marked.removeIf(each -> each.getMark() == null);
        for (Uncertainty each : marked) {
            correlation.put(each.getMark(), new NumberValidity(ElementReference.of(each, "uncertainty "
                    + each.getMark()), findings)
                    .share("correlation", each.getCorrelation()).map(share -> share.toDecimal().doubleValue())
                    .orElse(USUAL_CORRELATION));
        }
        return correlation;
    }
}
