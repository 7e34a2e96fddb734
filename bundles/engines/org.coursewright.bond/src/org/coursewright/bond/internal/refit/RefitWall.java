package org.coursewright.bond.internal.refit;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.building.LayingCost;
import org.coursewright.measure.Progress;

/**
 * A wall as it is laid, to be fitted to a small change of one dimension: runs that stay as they are keep their pieces, those
 * that become longer or shorter are filled {@linkplain RunRefit much as before}. What comes of it is a layout that exists,
 * found in a small fraction of the time that laying the wall takes; laying it may find a better one.
 */
public final class RefitWall {

    private final FaceRuns runs;
    /** By course and run the one way in which it is filled, null if it is not. */
    private final RefitWays[][] filled;
    /** By course how many joints lap too little with those of the course below, straight joints left out. */
    private final long[] laps;
    private final LayingCost cost;

    private RefitWall(FaceRuns runs, RefitWays[][] filled, long[] laps) {
        this.runs = runs;
        this.filled = filled;
        this.laps = laps;
        cost = cost(filled, laps);
    }

    /**
     * A layout of a wall, if it is one of the wall as it is now.
     *
     * @param runs of the wall
     * @param layout of the wall as it is or was
     * @return the layout, empty if it has other runs
     */
    public static Optional<RefitWall> matching(FaceRuns runs, WallLayout layout) {
        return new LaidRuns(runs, layout).areAll() ? Optional.of(of(runs, layout)) : Optional.empty();
    }

    static RefitWall of(FaceRuns runs, WallLayout layout) {
        RefitWays[][] filled = new LaidRuns(runs, layout).filled();
        return chosen(runs, filled, new boolean[filled.length], new long[filled.length], Progress.NONE);
    }

    /** @return the runs it fills */
    public FaceRuns runs() {
        return runs;
    }

    /** @return what the wall comes to so */
    public LayingCost cost() {
        return cost;
    }

    /**
     * Fits the layout to the wall with a dimension changed.
     *
     * @param now runs of the changed wall, found from those of this one or of a wall from which these were found
     * @param progress may cancel it
     * @return the wall so laid, or empty if its runs are not those of this one or nothing near fills one of them
     */
    public Optional<RefitWall> fit(FaceRuns now, Progress progress) {
        RefitWays[][] ways = filled.clone();
        boolean[] same = new boolean[ways.length];
        for (int course = 0; course < ways.length; course++) {
            same[course] = now.course(course) == runs.course(course);
            if (!same[course]) {
                Optional<RefitWays[]> refilled = refilled(course, now);
                if (refilled.isEmpty()) {
                    return Optional.empty();
                }
                ways[course] = refilled.get();
            }
        }
        return Optional.of(chosen(now, ways, same, laps.clone(), progress));
    }

    /** Ways to fill every run of the course, if ways are found for every one that can be filled. */
    private Optional<RefitWays[]> refilled(int course, FaceRuns now) {
        List<ShapedRun> before = runs.course(course);
        List<ShapedRun> after = now.course(course);
        if (before.size() != after.size()) {
            return Optional.empty();
        }
        RefitWays[] ways = filled[course].clone();
        for (int run = 0; run < ways.length; run++) {
            if (!before.get(run).form().isSame(after.get(run).form())) {
                if (!before.get(run).isAlike(after.get(run))) {
                    return Optional.empty();
                }
                RefitShape form = after.get(run).form();
                ways[run] = form.isFillable() ? now.memory().ways(form, Optional.ofNullable(ways[run])) : null;
                if (ways[run] != null && ways[run].count() == 0) {
                    return Optional.empty();
                }
            }
        }
        return Optional.of(ways);
    }

    /** @param same courses that need not be looked at, but for what they lap with others */
    private static RefitWall chosen(FaceRuns runs, RefitWays[][] ways, boolean[] same, long[] laps, Progress progress) {
        RefitChoice choice = new RefitChoice(runs, ways);
        for (int course = 1; course < ways.length; course++) {
            if (!same[course] || !same[course - 1]) {
                laps[course] = 0;
                choice.meetBelow(course);
            }
        }
        choice.choose(progress);
        choice.addLaps(laps);
        RefitWays[][] filled = ways.clone();
        for (int course = 0; course < ways.length; course++) {
            if (!same[course]) {
                filled[course] = choice.filled(course);
            }
        }
        return new RefitWall(runs, filled, laps);
    }

    private static LayingCost cost(RefitWays[][] filled, long[] laps) {
        long unfilled = 0;
        long cuts = 0;
        long violations = 0;
        for (int course = 0; course < filled.length; course++) {
            violations += laps[course];
            for (RefitWays run : filled[course]) {
                unfilled += run == null ? 1 : 0;
                cuts += run == null ? 0 : run.pattern().cuts();
            }
        }
        return new LayingCost(unfilled, violations, cuts);
    }
}
