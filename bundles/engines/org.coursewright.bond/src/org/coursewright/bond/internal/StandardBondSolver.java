package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Progress;

/** Hands the corners, then lays wall after wall. */
public final class StandardBondSolver implements BondSolver {

    @Override
    public BondResult solve(BondRequest request, Progress progress) {
        RequestCheck.check(request);
        Handing handing = HandingChoice.choose(request);
        List<WallLayout> walls = new ArrayList<>();
        for (WallFace wall : request.walls()) {
            progress.checkCancelled();
            progress.done((double) walls.size() / request.walls().size());
            walls.add(new WallLaying(wall, handing).lay(progress));
        }
        progress.done(1);
        return new BondResult(walls, handing.onOdd());
    }
}
