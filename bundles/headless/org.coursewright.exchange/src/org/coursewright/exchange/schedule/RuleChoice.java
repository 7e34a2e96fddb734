package org.coursewright.exchange.schedule;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.core.bond.JointRange;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;

/**
 * How walls are to be laid.
 *
 * @param lap least lap, or empty for a quarter of each wall's unit as seen, which earth building codes ask for (New
 *        Mexico 14.7.4 NMAC)
 * @param head head joints
 * @param bed bed joints
 * @param shortest shortest piece that may be cut, or empty for a quarter of each wall's unit as seen, 3 in or 75 mm at
 *        least (common practice, no source)
 */
public record RuleChoice(Optional<Length> lap, JointRange head, JointRange bed,
        Optional<Length> shortest) {

    public RuleChoice {
        Objects.requireNonNull(lap, "lap");
        Objects.requireNonNull(head, "head");
        Objects.requireNonNull(bed, "bed");
        Objects.requireNonNull(shortest, "shortest");
    }

    /**
     * What holds where nobody says otherwise: the {@link JointRange#usual usual joints}, lap and shortest piece left to
     * each wall.
     *
     * @param display whose round numbers are used
     * @return that choice
     */
    public static RuleChoice usual(DisplayUnit display) {
        JointRange joint = JointRange.usual(display);
        return new RuleChoice(Optional.empty(), joint, joint, Optional.empty());
    }

    /**
     * Reads a rule such as {@code lap=3.5 in,head=3/8 in:1/2 in:3/4 in,bed=3/8:1/2:5/8,shortest=4 in}. What it leaves
     * out is as usual.
     *
     * @param text the rule
     * @param format what a bare number means
     * @return that choice
     * @throws RuleTextException if the text is no rule
     */
    public static RuleChoice parse(String text, LengthFormat format) throws RuleTextException {
        return new RuleText(text, format).read();
    }
}
