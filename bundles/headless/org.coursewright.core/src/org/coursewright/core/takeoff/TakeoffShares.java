package org.coursewright.core.takeoff;

import java.util.Map;

import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.nesting.CutPlanner;
import org.coursewright.takeoff.quantities.BuildingTakeoff;
import org.coursewright.takeoff.quantities.JointFill;
import org.coursewright.takeoff.quantities.MortarRule;
import org.coursewright.takeoff.quantities.UnitRule;

/**
 * What is ordered on top of what is laid.
 *
 * @param breakage of units, such as 0.05 for 5 %
 * @param mortarWaste of mortar
 */
record TakeoffShares(Fraction breakage, Fraction mortarWaste) {

    /** Usual for blocks that are hauled and for cement mortar; common practice, no source. */
    static final TakeoffShares USUAL = new TakeoffShares(Fraction.of("0.05"), Fraction.of("0.25"));

    /** The first course is often laid in a richer mix, so it is told apart. */
    private static final String FIRST_MIX = "mortar of first courses";
    private static final String REST_MIX = "mortar of other courses";

    BuildingTakeoff engine(Map<String, UnitRule> units) {
        return new BuildingTakeoff(new MortarRule(FIRST_MIX, mortarWaste, REST_MIX, mortarWaste, JointFill.FULL), units,
                new CutPlanner());
    }

    /** @return a share as people write it, such as {@code 5 %} */
    static String percent(Fraction share) {
        return share.times(100).toDecimal().toPlainString() + " %";
    }
}
