package org.coursewright.benchmarks.oracle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.bond.WallFace;

/**
 * Lays a tiny wall by trying everything: every filling of every run, every combination within a course, every course on
 * every other. A second witness beside {@link GeneralModel}, with which it shares nothing but the stretches.
 */
public final class Exhaustive {

    private static final long VIOLATION = 1_000_000;

    private final WallFace wall;
    private final List<Stretch> stretches;
    private final int limit;

    private Exhaustive(WallFace wall, Handing handing, int limit) {
        this.wall = wall;
        this.stretches = Stretches.of(wall, handing);
        this.limit = limit;
    }

    /**
     * Finds the best score of a wall.
     *
     * @param limit most ways to lay a course
     * @return the best score, or empty if a course has more ways than that
     */
    public static Optional<Score> best(WallFace wall, Handing handing, int limit) {
        return new Exhaustive(wall, handing, limit).best();
    }

    private Optional<Score> best() {
        int unfillable = 0;
        List<Stretch> laid = new ArrayList<>();
        Map<Integer, List<LaidCourse>> courses = new HashMap<>();
        for (Stretch stretch : stretches) {
            List<LaidCourse> fillings = Fillings.of(wall, stretch, limit);
            if (fillings.isEmpty()) {
                unfillable++;
            } else {
                laid.add(stretch);
                courses.merge(stretch.course(), fillings, this::combine);
            }
        }
        if (courses.values().stream().anyMatch(ways -> ways.size() > limit)) {
            return Optional.empty();
        }
        long cost = cheapest(courses);
        return Optional.of(new Score(unfillable, (int) (cost / VIOLATION) - StraightJoints.count(laid),
                (int) (cost % VIOLATION)));
    }

    private List<LaidCourse> combine(List<LaidCourse> left, List<LaidCourse> right) {
        List<LaidCourse> both = new ArrayList<>();
        for (LaidCourse one : left) {
            for (LaidCourse other : right) {
                if (both.size() > limit) {
                    return both;
                }
                both.add(one.with(other));
            }
        }
        return both;
    }

    private long cheapest(Map<Integer, List<LaidCourse>> courses) {
        List<LaidCourse> below = List.of(LaidCourse.EMPTY);
        long[] costs = {0};
        for (int course = 0; course < wall.courses().size(); course++) {
            List<LaidCourse> above = courses.getOrDefault(course, List.of(LaidCourse.EMPTY));
            costs = laidOn(below, costs, above);
            below = above;
        }
        long cheapest = Long.MAX_VALUE;
        for (long cost : costs) {
            cheapest = Math.min(cheapest, cost);
        }
        return cheapest;
    }

    private long[] laidOn(List<LaidCourse> below, long[] costsBelow, List<LaidCourse> above) {
        long leastLap = wall.rule().leastLap().units();
        long[] costs = new long[above.size()];
        for (int upper = 0; upper < costs.length; upper++) {
            long cheapest = Long.MAX_VALUE;
            for (int lower = 0; lower < costsBelow.length; lower++) {
                if (costsBelow[lower] < cheapest) {
                    long laps = above.get(upper).shortLaps(below.get(lower), leastLap);
                    cheapest = Math.min(cheapest, costsBelow[lower] + laps * VIOLATION);
                }
            }
            costs[upper] = cheapest + above.get(upper).cuts();
        }
        return costs;
    }
}
