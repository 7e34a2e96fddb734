package org.coursewright.core.cost;

import java.util.Optional;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.core.validity.NumberValidity;
import org.coursewright.model.estimate.Uncertain;
import org.coursewright.model.estimate.Uncertainty;
import org.coursewright.takeoff.Fraction;

/** Reads how far something may be off. */
final class RangeReader {

    private final Findings findings;

    RangeReader(Findings findings) {
        this.findings = findings;
    }

    RangeBrief read(Uncertain uncertain, ElementReference element) {
        NumberValidity numbers = new NumberValidity(element, findings);
        Fraction low = numbers.positive("low", uncertain.getLowShare()).orElse(Fraction.ONE);
        Fraction high = numbers.positive("high", uncertain.getHighShare()).orElse(Fraction.ONE);
        if (low.compareTo(Fraction.ONE) > 0 || high.compareTo(Fraction.ONE) < 0) {
            findings.error("range.order", element,
                    "It may come out from %s to %s times what is expected. Give a low of at most 1 and a high of at least 1."
                            .formatted(low.toDecimal().toPlainString(), high.toDecimal().toPlainString()));
            return RangeBrief.CERTAIN;
        }
        return new RangeBrief(low, high, Optional.ofNullable(uncertain.getMovesWith()).map(Uncertainty::getMark));
    }
}
