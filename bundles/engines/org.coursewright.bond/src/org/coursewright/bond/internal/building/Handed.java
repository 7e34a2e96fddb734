package org.coursewright.bond.internal.building;

import java.util.List;

import org.coursewright.bond.BondResult;
import org.coursewright.bond.Effort;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.handing.Handing;

/**
 * A building handed and laid.
 *
 * @param handing which wall runs through where
 * @param walls how each is laid, in the order of the request
 * @param optimal whether no handing gives a better layout, proven
 * @param lowerBound cut pieces that every layout with as few unfilled runs and short laps needs, however handed
 */
public record Handed(Handing handing, List<WallLayout> walls, boolean optimal, int lowerBound) {

    /** The same as a result of the solver. */
    public BondResult result() {
        return new BondResult(walls, handing.onOdd(), optimal, lowerBound, Effort.FULL);
    }
}
