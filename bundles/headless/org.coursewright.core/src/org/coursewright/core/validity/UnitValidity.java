package org.coursewright.core.validity;

import java.util.List;
import java.util.Optional;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.catalogue.UnitType;

/** Whether a unit type has the dimensions of a masonry unit. */
public final class UnitValidity {

    private final LengthFormat format;
    private final Findings findings;

    /**
     * @param format how findings write lengths
     * @param findings hears what is not sound
     */
    public UnitValidity(LengthFormat format, Findings findings) {
        this.format = format;
        this.findings = findings;
    }

    /**
     * Checks a unit type.
     *
     * @param unit the unit type, not null
     * @return whether walls can be laid of it; if not, the findings say why
     */
    public boolean isSound(UnitType unit) {
        ElementReference element = ElementNames.of(unit);
        boolean sound = isSide(element, "length", unit.getLength()) & isSide(element, "width", unit.getWidth())
                & isSide(element, "height", unit.getHeight());
        if (!sound) {
            return false;
        }
        return isPiece(element, "cut step", unit.getCutStep(), unit.getLength())
                & isPiece(element, "shortest piece", unit.getShortestPiece(), unit.getLength())
                & isKerf(element, unit.getKerf()) & areSpecials(element, unit.getSpecialLengths(), unit.getLength());
    }

    private boolean isSide(ElementReference element, String side, Length value) {
        if (value == null) {
            findings.invalid("unit.no-" + side, element, "It has no %s. Give it one.".formatted(side));
            return false;
        }
        if (value.isLessThan(Limits.SMALLEST_UNIT) || value.isGreaterThan(Limits.LARGEST_UNIT)) {
            findings.invalid("unit." + side, element,
                    "Its %s of %s is not between %s and %s. Check the unit of measure."
                            .formatted(side, format.format(value), format.format(Limits.SMALLEST_UNIT),
                                    format.format(Limits.LARGEST_UNIT)));
            return false;
        }
        return true;
    }

    private boolean isPiece(ElementReference element, String what, Length value, Length whole) {
        if (value != null && (value.signum() <= 0 || value.isGreaterThan(whole))) {
            findings.invalid("unit." + what.replace(' ', '-'), element,
                    "Its %s of %s must be more than nothing and at most its length, %s.".formatted(what,
                            format.format(value), format.format(whole)));
            return false;
        }
        return true;
    }

    private boolean isKerf(ElementReference element, Length kerf) {
        if (kerf != null && (kerf.signum() < 0 || kerf.isGreaterThan(Limits.WIDEST_JOINT))) {
            findings.invalid("unit.kerf", element, "Its saw kerf of %s must be between nothing and %s."
                    .formatted(format.format(kerf), format.format(Limits.WIDEST_JOINT)));
            return false;
        }
        return true;
    }

    private boolean areSpecials(ElementReference element, List<Length> specials, Length whole) {
        Optional<Length> wrong = specials.stream()
                .filter(special -> special == null || special.signum() <= 0 || !special.isLessThan(whole)).findFirst();
        wrong.ifPresent(special -> findings.invalid("unit.special-length", element,
                "Its special length of %s must be more than nothing and less than the whole unit, %s."
                        .formatted(format.format(special), format.format(whole))));
        return wrong.isEmpty();
    }
}
