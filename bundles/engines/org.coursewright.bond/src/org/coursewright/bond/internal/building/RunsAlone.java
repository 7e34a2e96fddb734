package org.coursewright.bond.internal.building;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.lap.ForcedViolations;
import org.coursewright.bond.internal.lap.StraightJoints;
import org.coursewright.bond.internal.pieces.PieceSets;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunFinder;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.run.RunSpan;

/**
 * What every layout of a wall costs at least, each run looked at alone: quickly found and proven. What has been found of
 * a shape of run is kept for all walls of the same masonry.
 */
final class RunsAlone {

    private record Kind(Masonry masonry, RunShape shape) {
    }

    /** More shapes than the walls of a large building have, with every value of every dimension. */
    private static final int MOST_KEPT = 200_000;

    private final Map<Kind, OptionalInt> leastCuts = new HashMap<>();

    /** @return no more than any layout of the wall, so handed, costs */
    LayingCost of(WallFace wall, Handing handing) {
        Masonry masonry = Masonry.of(wall.stock(), wall.rule());
        long cuts = 0;
        long unfillable = 0;
        long violations = 0;
        List<RunSpan> below = List.of();
        for (List<RunSpan> course : new RunFinder(wall, handing).find()) {
            List<RunSpan> filled = new ArrayList<>();
            for (RunSpan run : course) {
                OptionalInt least = leastCuts(masonry, run.shape());
                cuts += least.orElse(0);
                unfillable += least.isPresent() ? 0 : 1;
                least.ifPresent(found -> filled.add(run));
            }
            violations += violations(masonry, below, filled);
            below = filled;
        }
        return new LayingCost(unfillable, violations, cuts);
    }

    private OptionalInt leastCuts(Masonry masonry, RunShape shape) {
        if (leastCuts.size() > MOST_KEPT) {
            leastCuts.clear();
        }
        return leastCuts.computeIfAbsent(new Kind(masonry, shape),
                kind -> new PieceSets(shape, masonry).leastCuts());
    }

    /** Those that no filling avoids, straight joints left out. */
    private static long violations(Masonry masonry, List<RunSpan> below, List<RunSpan> above) {
        ForcedViolations forced = new ForcedViolations(masonry);
        long violations = 0;
        for (RunSpan first : below) {
            for (RunSpan second : above) {
                violations += forced.between(first.shape(), second.shape(), second.from() - first.from())
                        - StraightJoints.between(first, second);
            }
        }
        return violations;
    }
}
