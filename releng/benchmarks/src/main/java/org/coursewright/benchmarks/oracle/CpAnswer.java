package org.coursewright.benchmarks.oracle;

import java.util.List;
import java.util.Optional;

/**
 * What the constraint solver said of one model.
 *
 * @param runs the stretches laid, or empty if it found no layout
 * @param lapViolations of that layout
 * @param cuts of that layout
 * @param isProven whether no layout within the model is better
 * @param isOutOfTime whether it stopped for want of time
 * @param leastViolations no layout within the model has fewer
 * @param leastCuts no layout within the model with as few as {@code leastViolations} has fewer
 */
record CpAnswer(Optional<List<LaidStretch>> runs, int lapViolations, int cuts, boolean isProven,
        boolean isOutOfTime, int leastViolations, int leastCuts) {

    /**
     * How many cuts more than its own fewest a stretch may take in any layout better than this one: with a violation
     * that might be spared, as many as it likes.
     */
    int slackToProve(int forcedViolations, int leastCutsOfAll) {
        return lapViolations > forcedViolations || runs.isEmpty() ? Integer.MAX_VALUE : cuts - 1 - leastCutsOfAll;
    }

    boolean isBetterThan(CpAnswer other) {
        return runs.isPresent() && (other.runs.isEmpty() || lapViolations < other.lapViolations
                || lapViolations == other.lapViolations && cuts < other.cuts);
    }
}
