package org.coursewright.benchmarks.oracle;

import java.util.List;

/**
 * Joints over joints that are so by design: both end a run against the same other masonry, a wall that is tied in, a
 * lintel or a beam two courses high. Nobody can lap them, so they are no lap violations.
 */
final class StraightJoints {

    private StraightJoints() {
    }

    /** @param laid the stretches that are laid */
    static int count(List<Stretch> laid) {
        int count = 0;
        for (Stretch lower : laid) {
            for (Stretch upper : laid) {
                if (upper.course() == lower.course() + 1) {
                    count += startAlike(lower, upper) ? 1 : 0;
                    count += endAlike(lower, upper) ? 1 : 0;
                }
            }
        }
        return count;
    }

    private static boolean startAlike(Stretch lower, Stretch upper) {
        return lower.from() == upper.from() && !lower.startsAgainst().isEmpty()
                && lower.startsAgainst().equals(upper.startsAgainst());
    }

    private static boolean endAlike(Stretch lower, Stretch upper) {
        return lower.to() == upper.to() && !lower.endsAgainst().isEmpty()
                && lower.endsAgainst().equals(upper.endsAgainst());
    }
}
