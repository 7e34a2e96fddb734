package org.coursewright.core.validity;

import org.coursewright.bond.JointRule;
import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;

/** Whether a bond rule can be kept at all. */
public final class RuleValidity {

    private final LengthFormat format;
    private final Findings findings;

    /**
     * @param format how findings write lengths
     * @param findings hears what is not sound
     */
    public RuleValidity(LengthFormat format, Findings findings) {
        this.format = format;
        this.findings = findings;
    }

    /**
     * Checks the range of a joint.
     *
     * @param element whose rule it is
     * @param joint which joint, {@code head joint} or {@code bed joint}
     * @return whether the range is in order; if not, the findings say why
     */
    public boolean isRange(ElementReference element, String joint, Length least, Length nominal, Length most) {
        boolean inOrder = least.signum() >= 0 && !nominal.isLessThan(least) && !most.isLessThan(nominal)
                && !most.isGreaterThan(Limits.WIDEST_JOINT);
        if (!inOrder) {
            findings.invalid("rule." + joint.replace(' ', '-'), element,
                    "Its %s rule of least %s, aimed at %s, most %s is not in that order between nothing and %s."
                            .formatted(joint, format.format(least), format.format(nominal), format.format(most),
                                    format.format(Limits.WIDEST_JOINT)));
        }
        return inOrder;
    }

    /**
     * Checks the head joints and the lap against the unit.
     *
     * @param element whose rule it is
     * @param rule what head joints must keep
     * @param face what one unit shows along the wall
     * @return whether the rule can be kept; if not, the findings say why
     */
    public boolean isSound(ElementReference element, JointRule rule, Length face) {
        if (!isRange(element, "head joint", rule.least(), rule.nominal(), rule.most())) {
            return false;
        }
        if (rule.leastLap().signum() < 0 || rule.leastLap().times(2).isGreaterThan(face)) {
            findings.invalid("rule.lap", element,
                    "Its least lap of %s must be at most half of what a unit shows, %s."
                            .formatted(format.format(rule.leastLap()), format.format(face)));
            return false;
        }
        return true;
    }
}
