package org.coursewright.bond.internal.laying;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.bond.internal.stack.Skeleton;
import org.coursewright.measure.Progress;

/**
 * Adds patterns for runs that have joints of lintels, tees or corners above or below them, and patterns for their
 * neighbours that go with these. Without them a long run over several lintels finds no pattern that keeps all laps.
 */
final class SkeletonPatterns {

    private static final int VARIANTS = 6;
    private static final int MOST_CUTS = 2;

    private record Place(RunShape shape, List<Long> joints) {
    }

    private final RunStack stack;
    private final Skeleton skeleton;
    private final PartnerSearch partners;
    private final Set<Place> done = new HashSet<>();

    SkeletonPatterns(RunStack stack) {
        this.stack = stack;
        skeleton = stack.skeleton();
        partners = new PartnerSearch(stack);
    }

    void add(Progress progress) {
        for (int run = 0; run < stack.runs().size(); run++) {
            progress.checkCancelled();
            PatternPool pool = stack.pool(run);
            List<Long> joints = skeleton.joints(run);
            if (!joints.isEmpty() && done.add(new Place(pool.shape(), joints))) {
                for (Pattern pattern : pool.variants(skeleton.windows(run), skeleton.least(run), MOST_CUTS,
                        VARIANTS)) {
                    pool.add(pattern);
                    partners.follow(run, pattern, true);
                    partners.follow(run, pattern, false);
                }
            }
        }
    }
}
