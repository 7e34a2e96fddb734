package org.coursewright.core.validity;

import java.math.BigDecimal;
import java.util.Optional;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.takeoff.Fraction;

/** Whether numbers of the model can be reckoned with; what cannot is told and left out. */
public final class NumberValidity {

    private static final int MOST_DIGITS = 30;

    private final ElementReference element;
    private final Findings findings;

    /**
     * @param element whose numbers they are
     * @param findings hears what is not sound
     */
    public NumberValidity(ElementReference element, Findings findings) {
        this.element = element;
        this.findings = findings;
    }

    /**
     * @param name of the number, such as {@code breakage}
     * @param value as stored, null for none
     * @return the share from 0 to 1, or empty if there is none or it is no share
     */
    public Optional<Fraction> share(String name, BigDecimal value) {
        Optional<Fraction> share = finite(name, value);
        return refuseUnless(share.filter(each -> each.signum() < 0 || each.compareTo(Fraction.ONE) > 0).isEmpty(), name,
                value, "a share from 0 to 1, such as 0.05 for 5 %", share);
    }

    /** @return the number above 0, or empty if there is none or it is not above 0; parameters as for {@link #share} */
    public Optional<Fraction> positive(String name, BigDecimal value) {
        Optional<Fraction> number = finite(name, value);
        return refuseUnless(number.filter(each -> each.signum() <= 0).isEmpty(), name, value, "a number above 0",
                number);
    }

    /** @return the number of 0 or more, or empty if there is none or it is less; parameters as for {@link #share} */
    public Optional<Fraction> notNegative(String name, BigDecimal value) {
        Optional<Fraction> number = finite(name, value);
        return refuseUnless(number.filter(each -> each.signum() < 0).isEmpty(), name, value, "a number of 0 or more",
                number);
    }

    /**
     * Whether a number has digits that can be written down, so that reckoning with it ends.
     *
     * @param value not null
     * @return whether it has at most thirty digits before and after the point
     */
    public static boolean isReckonable(BigDecimal value) {
        return value.precision() <= MOST_DIGITS && Math.abs((long) value.scale()) <= MOST_DIGITS;
    }

    private Optional<Fraction> finite(String name, BigDecimal value) {
        Optional<BigDecimal> given = Optional.ofNullable(value);
        Optional<Fraction> sound = given.filter(NumberValidity::isReckonable).map(Fraction::of);
        return refuseUnless(given.isPresent() == sound.isPresent(), name, value, "a number of at most 30 digits",
                sound);
    }

    private Optional<Fraction> refuseUnless(boolean holds, String name, BigDecimal value, String wanted,
            Optional<Fraction> number) {
        if (holds) {
            return number;
        }
        findings.error("number." + name.replace(' ', '-'), element,
                "Its %s is %s. Enter %s.".formatted(name, shown(value), wanted));
        return Optional.empty();
    }

    private static String shown(BigDecimal value) {
        return isReckonable(value) ? value.toPlainString() : "no number that can be written out";
    }
}
