package org.coursewright.core.bond;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.core.validity.ElementNames;
import org.coursewright.core.validity.RuleValidity;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;

/** Whether a wall, its rule and its courses make sense together. */
final class WallSoundness {

    /** More units than this in one wall is a slip of the pen, and would take long to lay. */
    private static final long MOST_UNITS = 200_000;

    /** More units than this in all walls together, too: fifty times a large building. */
    private static final long MOST_UNITS_IN_ALL = 1_000_000;

    private final WallPlan plan;
    private final ElementReference element;
    private final LengthFormat format;
    private final Findings findings;

    WallSoundness(WallPlan plan, LengthFormat format, Findings findings) {
        this.plan = plan;
        this.element = ElementNames.of(plan.wall());
        this.format = format;
        this.findings = findings;
    }

    boolean isSound() {
        return isRuleSound() && isLengthSound() && isSizeSound() && isTopSound();
    }

    /** @return whether the wall fits in with those before it, which take so many units; if not, the findings say so */
    boolean isAffordable(long unitsBefore) {
        boolean affordable = unitsBefore + units() <= MOST_UNITS_IN_ALL;
        if (!affordable) {
            findings.invalid("project.too-many-units", element,
                    "With it the building takes more than %d units. Split the project or check the sizes of its walls."
                            .formatted(MOST_UNITS_IN_ALL));
        }
        return affordable;
    }

    /** @return about how many units the wall takes, openings not taken off */
    long units() {
        long along = plan.length().units() / plan.body().stock().whole().units() + 1;
        return Math.multiplyExact(along, plan.lines().courseBelow(plan.top().highest()));
    }

    private boolean isRuleSound() {
        RuleValidity validity = new RuleValidity(format, findings);
        LayingRule rule = plan.body().rule();
        return validity.isSound(element, rule.joints(), plan.body().stock().whole())
                & validity.isRange(element, "bed joint", rule.bedLeast(), rule.bedNominal(), rule.bedMost());
    }

    private boolean isLengthSound() {
        if (plan.length().signum() <= 0) {
            findings.invalid("wall.no-length", element,
                    "Nothing is left of it between the faces of the walls it meets. Make it longer or take it out.");
            return false;
        }
        return true;
    }

    private boolean isSizeSound() {
        if (units() > MOST_UNITS) {
            findings.invalid("wall.too-many-units", element,
                    "It would take more than %d units. Check its length, its height and its unit type."
                            .formatted(MOST_UNITS));
            return false;
        }
        return true;
    }

    private boolean isTopSound() {
        if (!plan.top().hasOnePeak()) {
            findings.invalid("wall.top-dips", element,
                    "Its top dips between two peaks. Draw it as two walls, so that every course is in one piece.");
            return false;
        }
        CourseLines lines = plan.lines();
        Length square = plan.wall().getHeight();
        if (!lines.isCourseLine(square)) {
            findings.warning("wall.height-off-course", element,
                    "Its height of %s is no whole number of courses of %s; the nearest are %s (%d courses) and %s (%d courses)."
                            .formatted(format.format(square), format.format(lines.courseHeight()),
                                    format.format(lines.lineBelow(square)), lines.wholeCoursesBelow(square),
                                    format.format(lines.lineAbove(square)), lines.courseBelow(square)));
        }
        return true;
    }
}
