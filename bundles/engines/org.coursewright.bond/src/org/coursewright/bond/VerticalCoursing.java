package org.coursewright.bond;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.internal.coursing.LiftPlan;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;

/**
 * Divides a wall's height into lifts so that as many marks as possible fall on course lines. Each course is a bed joint
 * and a unit; all bed joints of a lift are equal.
 *
 * @param lifts from the bottom up, without a gap
 * @param missed marks that fall on no course line, from the bottom up
 */
public record VerticalCoursing(List<Lift> lifts, List<MissedMark> missed) {

    public VerticalCoursing {
        lifts = List.copyOf(lifts);
        missed = List.copyOf(missed);
    }

    /**
     * Finds the lifts: as few marks missed as possible, then bed joints as near to the nominal as possible, measured by
     * the sum over courses of how far each lift's total differs.
     *
     * @param rule unit height and bed joints, not null
     * @param base bottom of the first bed joint above the benchmark
     * @param marks heights above the base that should fall on course lines, in any order
     * @return the coursing up to the highest mark that is met
     * @throws InvalidBondRequestException if a mark does not lie above the base
     */
    public static VerticalCoursing of(BedRule rule, Length base, List<LevelMark> marks) {
        return new LiftPlan(rule, base, marks).solve();
    }

    /** @return every course line from the bottom up, the base itself left out */
    public List<CourseLine> storyPole() {
        List<CourseLine> lines = new ArrayList<>();
        for (Lift lift : lifts) {
            int count = lift.courses();
            Length rise = lift.to().minus(lift.from());
            for (int course = 1; course <= count; course++) {
                LengthRatio height = new LengthRatio(lift.from().times(count).plus(rise.times(course)), count);
                lines.add(new CourseLine(lines.size() + 1, height));
            }
        }
        return lines;
    }
}
