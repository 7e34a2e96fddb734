package org.coursewright.core.cost;

import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.core.validity.NumberValidity;
import org.coursewright.measure.Money;
import org.coursewright.measure.UnitCode;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.estimate.RateKind;
import org.coursewright.takeoff.cost.CostKind;
import org.coursewright.takeoff.cost.ElementTable;

/** Reads rates and tells what is wrong with each. */
final class RateReader {

    private final Currency currency;
    private final ElementTable elements;
    private final Findings findings;
    private final RangeReader ranges;

    RateReader(Currency currency, ElementTable elements, Findings findings) {
        this.currency = currency;
        this.elements = elements;
        this.findings = findings;
        this.ranges = new RangeReader(findings);
    }

    /** @return rates that have a resource, a price and a unit; what else is wrong with them is for the lines to tell too */
    List<RateBrief> read(List<Rate> rates) {
        Map<String, Integer> seen = new HashMap<>();
        List<RateBrief> briefs = new ArrayList<>();
        for (Rate rate : rates) {
            ElementReference element = ElementReference.of(rate, "rate " + rate.getMark());
            if (rate.getMark() == null || rate.getMark().isBlank()) {
                findings.error("rate.resource", ElementReference.of(rate, "rate without a resource"),
                        "Say what it is the rate of.");
            } else if (seen.merge(rate.getMark(), 1, Integer::sum) == 2) {
                findings.error("rate.twice", element, "Its resource has two rates. Take one of them out.");
            }
            if (hasPrice(rate, element)) {
                check(rate, element);
                briefs.add(brief(rate, element));
            }
        }
        return briefs;
    }

    private boolean hasPrice(Rate rate, ElementReference element) {
        if (rate.getMark() == null || rate.getPrice() == null || rate.getUnitCode() == null
                || !NumberValidity.isReckonable(rate.getPrice().amount())) {
            findings.error("rate.incomplete", element,
                    "It needs a resource, a price such as 12.50 %s and a unit code such as MTQ.".formatted(currency));
            return false;
        }
        return true;
    }

    private void check(Rate rate, ElementReference element) {
        Money price = rate.getPrice();
        if (price.amount().signum() < 0) {
            findings.error("rate.negative", element, "Its price is %s. It must not be negative.".formatted(price));
        }
        if (!price.currency().equals(currency)) {
            findings.error("rate.currency", element, "Its price is %s, but the project is in %s. Convert it."
                    .formatted(price, currency));
        }
        if (UnitCode.find(rate.getUnitCode()).isEmpty()) {
            findings.error("rate.unit", element, "Its unit code %s is not known. Use such as MTQ, KGM, H87 or HUR."
                    .formatted(rate.getUnitCode()));
        }
        if (rate.getElement() != null && elements.find(rate.getElement()).isEmpty()) {
            findings.error("rate.element", element, "Its element %s is not in the table of elements. Use such as B2010."
                    .formatted(rate.getElement()));
        }
        if (rate.getAsOf() == null) {
            findings.note("rate.no-date", element, "It has no date, so nobody can tell how old the price is.");
        }
    }

    private RateBrief brief(Rate rate, ElementReference element) {
        return new RateBrief(new org.coursewright.takeoff.cost.Rate(rate.getMark(), kind(rate.getKind()), rate
                .getPrice(), rate.getUnitCode(), Optional.ofNullable(rate.getAsOf()),
                Optional.ofNullable(rate
                        .getSource()).orElse("")),
                given(rate.getTrade()), given(rate.getElement()), ranges.read(rate, element));
    }

    private static CostKind kind(RateKind kind) {
        return CostKind.valueOf(kind.name());
    }

    private static Optional<String> given(String text) {
        return Optional.ofNullable(text).filter(each -> !each.isBlank());
    }
}
