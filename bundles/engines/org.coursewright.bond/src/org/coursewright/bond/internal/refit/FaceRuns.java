package org.coursewright.bond.internal.refit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.internal.building.LayingCost;
import org.coursewright.bond.internal.building.RequestCheck;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.lap.ForcedViolations;
import org.coursewright.bond.internal.lap.StraightJoints;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunFinder;
import org.coursewright.bond.internal.run.RunSpan;

/**
 * The runs of a wall whose corners are handed, and what no layout of them goes below. Those of the same wall with a
 * dimension changed are found from them: courses that the change does not touch are taken over as they are.
 */
public final class FaceRuns {

    private final WallFace wall;
    private final Handing handing;
    private final RefitMemory memory;
    private final List<List<ShapedRun>> courses = new ArrayList<>();
    /** By course what its runs need, and what those between it and the course below lap too little at least. */
    private final LayingCost[] bounds;

    private FaceRuns(WallFace wall, Handing handing, RefitMemory memory) {
        this.wall = wall;
        this.handing = handing;
        this.memory = memory;
        bounds = new LayingCost[wall.courses().size()];
    }

    /**
     * The runs of a wall of a building.
     *
     * @param wall of that building
     * @param building whose meetings it takes part in
     * @param throughOnOdd by meeting id the wall that runs through in odd courses
     * @return its runs
     */
    public static FaceRuns of(WallFace wall, BondRequest building, Map<String, String> throughOnOdd) {
        RequestCheck.check(building);
        return of(wall, new Handing(building.meetings(), throughOnOdd),
                new RefitMemory(Masonry.of(wall.stock(), wall.rule())));
    }

    static FaceRuns of(WallFace wall, Handing handing, RefitMemory memory) {
        FaceRuns runs = new FaceRuns(wall, handing, memory);
        RunFinder finder = new RunFinder(wall, handing);
        for (int course = 0; course < runs.bounds.length; course++) {
            runs.courses.add(runs.shaped(finder, course));
            runs.bounds[course] = runs.boundOf(course);
        }
        return runs;
    }

    /**
     * The runs of the wall with a dimension changed.
     *
     * @param changed the same wall but for its length and what interrupts it, with as many courses
     * @return its runs
     */
    public FaceRuns changed(WallFace changed) {
        FaceRuns now = new FaceRuns(changed, handing, memory);
        RunFinder finder = new RunFinder(changed, handing);
        boolean[] touched = touched(changed);
        for (int course = 0; course < touched.length; course++) {
            now.courses.add(touched[course] ? now.shaped(finder, course) : courses.get(course));
            boolean same = !touched[course] && (course == 0 || !touched[course - 1]);
            now.bounds[course] = same ? bounds[course] : now.boundOf(course);
        }
        return now;
    }

    private List<ShapedRun> shaped(RunFinder finder, int course) {
        List<ShapedRun> runs = new ArrayList<>();
        for (RunSpan span : finder.ofCourse(course)) {
            runs.add(new ShapedRun(span, memory.shape(span.shape())));
        }
        return runs;
    }

    private boolean[] touched(WallFace changed) {
        boolean[] touched = new boolean[wall.courses().size()];
        boolean everywhere = !isOtherwiseEqual(changed);
        for (int course = 0; course < touched.length; course++) {
            touched[course] = everywhere || isTouched(wall.courses().get(course).number(), changed);
        }
        return touched;
    }

    private boolean isOtherwiseEqual(WallFace changed) {
        return changed.obstacles().size() == wall.obstacles().size() && changed.length().equals(wall.length())
                && changed.start().equals(wall.start()) && changed.end().equals(wall.end())
                && changed.courses().equals(wall.courses()) && changed.pins().equals(wall.pins());
    }

    private boolean isTouched(int course, WallFace changed) {
        for (int index = 0; index < wall.obstacles().size(); index++) {
            Obstacle before = wall.obstacles().get(index);
            Obstacle after = changed.obstacles().get(index);
            boolean there = isThere(before, course) || isThere(after, course);
            if (there && !before.equals(after)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isThere(Obstacle obstacle, int course) {
        return obstacle.firstCourse() <= course && course <= obstacle.lastCourse();
    }

    private LayingCost boundOf(int course) {
        long cuts = 0;
        long unfillable = 0;
        for (ShapedRun run : courses.get(course)) {
            cuts += run.form().leastCuts();
            unfillable += run.form().isFillable() ? 0 : 1;
        }
        return new LayingCost(unfillable, course == 0 ? 0 : forced(courses.get(course - 1), courses.get(course)), cuts);
    }

    /** Laps that no filling keeps, straight joints left out. */
    private long forced(List<ShapedRun> below, List<ShapedRun> above) {
        ForcedViolations forced = new ForcedViolations(memory.masonry());
        long violations = 0;
        for (ShapedRun lower : below) {
            for (ShapedRun upper : above) {
                if (lower.form().isFillable() && upper.form().isFillable()
                        && lower.meets(upper, memory.masonry().lap())) {
                    violations += forced.between(lower.shape(), upper.shape(), lower.offsetOf(upper))
                            - StraightJoints.between(lower.span(), upper.span());
                }
            }
        }
        return violations;
    }

    /** @return what no layout goes below */
    public LayingCost bound() {
        LayingCost bound = LayingCost.NONE;
        for (LayingCost each : bounds) {
            bound = bound.plus(each);
        }
        return bound;
    }

    int courses() {
        return courses.size();
    }

    /** The runs of a course; the very same list as before if a change did not touch it. */
    List<ShapedRun> course(int index) {
        return courses.get(index);
    }

    RefitMemory memory() {
        return memory;
    }
}
