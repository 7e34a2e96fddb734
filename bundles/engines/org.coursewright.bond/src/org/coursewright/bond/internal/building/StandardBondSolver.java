package org.coursewright.bond.internal.building;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.measure.Progress;

/** Hands the corners and lays the walls. */
public final class StandardBondSolver implements BondSolver {

    @Override
    public BondResult solve(BondRequest request, Progress progress) {
        RequestCheck.check(request);
        Handed handed = new HandingSearch(request, new Layings()).search(progress);
        progress.done(1);
        return handed.result();
    }
}
