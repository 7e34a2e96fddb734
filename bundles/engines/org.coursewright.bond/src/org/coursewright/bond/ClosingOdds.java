package org.coursewright.bond;

import org.coursewright.bond.internal.odds.NormalDistribution;
import org.coursewright.measure.Length;

/**
 * The odds that a run closes without a cut when it is laid by hand. The sum of m joints of mean µ, standard deviation σ
 * and common correlation ρ has mean mµ and variance mσ²(1 + (m-1)ρ); it is taken as normal, which holds exactly for
 * normal joints and closely for many. The run closes if its joints take no more than what the plan leaves for them. The
 * spread grows with the root of m where joints are independent and with m where they share a habit.
 */
public final class ClosingOdds {

    private final JointHabit habit;

    /** @param habit how the crew lays, not null */
    public ClosingOdds(JointHabit habit) {
        this.habit = habit;
    }

    /**
     * The odds that a planned run closes.
     *
     * @param run the run, not null
     * @return probability, 0 to 1; 1 for a run without joints
     */
    public double of(Run run) {
        return run.joint().map(joint -> of(joint.total(), joint.count())).orElse(1.0);
    }

    /**
     * The odds that joints laid by hand take no more than a length.
     *
     * @param total what all joints together may take
     * @param joints their number, at least 1
     * @return probability, 0 to 1
     */
    public double of(Length total, int joints) {
        double slack = millimetres(total) - joints * habit.mean();
        double spread = spread(joints);
        if (spread == 0) {
            return slack >= 0 ? 1 : 0;
        }
        return NormalDistribution.cumulative(slack / spread);
    }

    /**
     * What must be added to nominal joints so that a run closes with chosen odds: m(µ - j) + z·σ√(m(1 + (m-1)ρ)).
     *
     * @param nominal the joint planned with
     * @param joints their number, at least 1
     * @param odds chosen odds, above 0 and below 1
     * @return the reserve (mm); negative if the nominal joints leave more than enough
     */
    public double reserve(Length nominal, int joints, double odds) {
        if (!(odds > 0 && odds < 1)) {
            throw new InvalidBondRequestException(
                    "Odds of %s cannot be reached: choose above 0 and below 1.".formatted(odds));
        }
        return joints * (habit.mean() - millimetres(nominal)) + NormalDistribution.quantile(odds) * spread(joints);
    }

    private double spread(int joints) {
        return habit.deviation() * Math.sqrt(joints * (1 + (joints - 1) * habit.likeness()));
    }

    private static double millimetres(Length length) {
        return (double) length.units() / Length.UNITS_PER_MILLIMETRE;
    }
}
