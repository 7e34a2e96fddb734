package org.coursewright.bond.internal;

import java.util.HashMap;
import java.util.Map;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Progress;

/** Lays walls and remembers how, so that equal walls are laid once. */
final class Layings {

    private final Map<HandedWall, WallLayout> known = new HashMap<>();
    private final Map<HandedWall, Integer> bounds = new HashMap<>();

    WallLayout lay(WallFace wall, Handing handing, Progress progress) {
        HandedWall key = HandedWall.of(wall, handing);
        WallLayout layout = known.get(key);
        if (layout == null) {
            layout = new WallLaying(wall, handing).lay(progress);
            known.put(key, layout);
        }
        return layout.under(wall.mark());
    }

    /** Cuts of every layout of the wall, so handed, that has no avoidable short lap; proven. */
    int leastCuts(WallFace wall, Handing handing, Progress progress) {
        HandedWall key = HandedWall.of(wall, handing);
        Integer bound = bounds.get(key);
        if (bound == null) {
            RunStack stack = new RunStack(Masonry.of(wall.stock(), wall.rule()), new RunFinder(wall, handing).find());
            bound = new CutBound(stack).prove(progress);
            bounds.put(key, bound);
        }
        return bound;
    }
}
