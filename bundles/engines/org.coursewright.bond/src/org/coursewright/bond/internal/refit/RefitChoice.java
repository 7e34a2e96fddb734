package org.coursewright.bond.internal.refit;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.internal.choice.CostNetwork;
import org.coursewright.bond.internal.lap.StraightJoints;
import org.coursewright.measure.Progress;

/**
 * Chooses for runs of a wall that can be filled in several ways what laps best with those that can be filled in one way and
 * with one another, then what needs the fewest cuts. Exact: along stacks of runs, where each lies on one other at most, from
 * the bottom up; otherwise by {@link CostNetwork}.
 */
final class RefitChoice {

    /** Two runs of consecutive courses, near enough for their joints to lap too little. */
    private record Contact(RefitRun below, RefitRun above, RefitLaps laps, int course, int straight) {
    }

    private final FaceRuns runs;
    private final RefitRun[][] filled;
    private final List<RefitRun> open = new ArrayList<>();
    private final List<Contact> contacts = new ArrayList<>();
    private boolean stacks = true;

    /** @param ways to fill every run by course; null for a run that is left unfilled */
    RefitChoice(FaceRuns runs, RefitWays[][] ways) {
        this.runs = runs;
        filled = new RefitRun[ways.length][];
        for (int course = 0; course < ways.length; course++) {
            filled[course] = new RefitRun[ways[course].length];
            for (int run = 0; run < ways[course].length; run++) {
                if (ways[course][run] != null) {
                    filled[course][run] = new RefitRun(ways[course][run]);
                }
            }
        }
    }

    /** Looks at what runs of this course lap with runs of the course below. */
    void meetBelow(int course) {
        List<ShapedRun> below = runs.course(course - 1);
        List<ShapedRun> above = runs.course(course);
        long lap = runs.memory().masonry().lap();
        for (int lower = 0; lower < below.size(); lower++) {
            for (int upper = 0; upper < above.size(); upper++) {
                boolean both = filled[course - 1][lower] != null && filled[course][upper] != null;
                if (both && below.get(lower).meets(above.get(upper), lap)) {
                    meet(course, filled[course - 1][lower], filled[course][upper], below.get(lower), above.get(upper));
                }
            }
        }
    }

    private void meet(int course, RefitRun lower, RefitRun upper, ShapedRun below, ShapedRun above) {
        RefitLaps laps = runs.memory().laps(lower.ways(), upper.ways(), below.offsetOf(above));
        contacts.add(new Contact(lower, upper, laps, course, StraightJoints.between(below.span(), above.span())));
        if (lower.isOpen() && upper.isOpen()) {
            stacks &= upper.liesOn(lower, laps);
        } else if (lower.isOpen()) {
            lower.add(way -> laps.at(way, 0));
        } else if (upper.isOpen()) {
            upper.add(way -> laps.at(0, way));
        }
    }

    void choose(Progress progress) {
        for (RefitRun[] course : filled) {
            for (RefitRun run : course) {
                if (run != null && run.isOpen()) {
                    open.add(run);
                }
            }
        }
        if (stacks) {
            open.forEach(RefitRun::accumulate);
            for (int run = open.size() - 1; run >= 0; run--) {
                open.get(run).choose();
            }
        } else {
            chooseByNetwork(progress);
        }
    }

    private void chooseByNetwork(Progress progress) {
        CostNetwork network = new CostNetwork(open.stream().map(RefitRun::costs).toArray(long[][]::new));
        for (Contact contact : contacts) {
            if (contact.below().isOpen() && contact.above().isOpen()) {
                network.add(open.indexOf(contact.below()), open.indexOf(contact.above()), contact.laps().costs());
            }
        }
        int[] chosen = network.solve(progress);
        for (int run = 0; run < chosen.length; run++) {
            open.get(run).choose(chosen[run]);
        }
    }

    /** The one way in which every run of a course is filled now; null for a run that is left unfilled. */
    RefitWays[] filled(int course) {
        RefitWays[] chosen = new RefitWays[filled[course].length];
        for (int run = 0; run < chosen.length; run++) {
            chosen[run] = filled[course][run] == null ? null : filled[course][run].filled();
        }
        return chosen;
    }

    /** Adds short laps, straight joints left out, to those of the courses that were looked at. */
    void addLaps(long[] laps) {
        for (Contact contact : contacts) {
            laps[contact.course()] += contact.laps().at(contact.below().chosen(), contact.above().chosen())
                    - contact.straight();
        }
    }
}
