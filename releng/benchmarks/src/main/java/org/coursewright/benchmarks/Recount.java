package org.coursewright.benchmarks;

import org.coursewright.benchmarks.oracle.Handing;
import org.coursewright.benchmarks.oracle.Score;
import org.coursewright.bond.ShortLap;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;

/** Gives a layout the counts that its pieces come to. */
final class Recount {

    private Recount() {
    }

    static WallLayout of(WallFace wall, Handing handing, WallLayout layout) {
        Score score = Score.of(wall, handing, layout);
        return new WallLayout(layout.mark(), layout.courses(), score.cuts(), ShortLap.in(wall, layout.courses()),
                Score.straightJoints(wall, handing, layout),
                layout.unfillable(), false, 0);
    }
}
