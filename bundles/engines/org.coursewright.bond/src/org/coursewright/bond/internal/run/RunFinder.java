package org.coursewright.bond.internal.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.coursewright.bond.Course;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.internal.handing.Handing;

/** Finds the runs of every course of a wall: the stretches between its ends and what interrupts it. */
public final class RunFinder {

    private record Edge(long at, RunEnd kind) {
    }

    private static final Comparator<Obstacle> ALONG_WALL = Comparator.comparing(Obstacle::from)
            .thenComparing(obstacle -> obstacle.kind().runEnd(), Comparator.reverseOrder())
            .thenComparing(Obstacle::to);

    private final WallFace wall;
    private final Handing handing;

    /** @param handing which walls run through where the wall meets others */
    public RunFinder(WallFace wall, Handing handing) {
        this.wall = wall;
        this.handing = handing;
    }

    /** Runs by course from the bottom up, each course's from start to end. */
    public List<List<RunSpan>> find() {
        List<List<RunSpan>> runs = new ArrayList<>();
        for (int index = 0; index < wall.courses().size(); index++) {
            runs.add(ofCourse(index));
        }
        return runs;
    }

    /** Runs of the course of that index, from start to end. */
    public List<RunSpan> ofCourse(int index) {
        return runs(index, wall.courses().get(index));
    }

    private List<RunSpan> runs(int index, Course course) {
        Edge end = end(course);
        Edge cursor = start(course);
        List<RunSpan> runs = new ArrayList<>();
        for (Obstacle obstacle : interrupting(course)) {
            Edge near = new Edge(obstacle.from().units(), obstacle.kind().runEnd());
            Edge far = new Edge(obstacle.to().units(), obstacle.kind().runEnd());
            if (near.at >= end.at) {
                break;
            }
            add(runs, index, course, cursor, near);
            cursor = further(cursor, far);
        }
        add(runs, index, course, cursor, end);
        return runs;
    }

    /** Where two obstacles end together, masonry (a joint) decides how the next run begins. */
    private static Edge further(Edge cursor, Edge far) {
        if (far.at != cursor.at) {
            return far.at > cursor.at ? far : cursor;
        }
        return cursor.kind == RunEnd.JOINT ? cursor : far;
    }

    private void add(List<RunSpan> runs, int index, Course course, Edge from, Edge to) {
        if (from.at < to.at) {
            long topFrom = course.topFrom().isGreaterThan(course.from()) ? course.topFrom().units() : from.at;
            long topTo = course.topTo().isLessThan(course.to()) ? course.topTo().units() : to.at;
            runs.add(new RunSpan(index, from.at, to.at, from.kind, to.kind, topFrom, topTo,
                    RunPins.of(wall.pins(), course.number(), from.at, to.at)));
        }
    }

    private List<Obstacle> interrupting(Course course) {
        if (wall.obstacles().isEmpty()) {
            return List.of();
        }
        return wall.obstacles().stream()
                .filter(obstacle -> obstacle.firstCourse() <= course.number()
                        && course.number() <= obstacle.lastCourse())
                .filter(obstacle -> obstacle.meeting()
                        .map(id -> handing.endingWallRunsThrough(id, course.isOdd())).orElse(true))
                .sorted(ALONG_WALL).toList();
    }

    private Edge start(Course course) {
        Edge level = level(wall.start(), course);
        long from = course.from().units();
        return raked(level, from, course.topFrom().units() - from, from > 0);
    }

    private Edge end(Course course) {
        long length = wall.length().units();
        Edge level = level(wall.end(), course);
        long in = length - course.to().units();
        Edge raked = raked(level, in, course.to().units() - course.topTo().units(), in > 0);
        return new Edge(length - raked.at, raked.kind);
    }

    /** How the course ends if it is not raked, measured inwards from the wall's outer end. */
    private Edge level(WallEnd end, Course course) {
        if (!end.beside().contains(course.level())) {
            return new Edge(0, RunEnd.FACE);
        }
        if (end instanceof WallEnd.Corner corner) {
            return runsThrough(corner.meeting(), course)
                    ? new Edge(0, RunEnd.FACE)
                    : new Edge(corner.setback().units(), RunEnd.JOINT);
        } else if (end instanceof WallEnd.Bonded bonded) {
            return runsThrough(bonded.meeting(), course)
                    ? new Edge(-bonded.reach().units(), RunEnd.FACE)
                    : new Edge(0, RunEnd.JOINT);
        } else if (end instanceof WallEnd.Tied) {
            return new Edge(0, RunEnd.JOINT);
        }
        return new Edge(0, RunEnd.FACE);
    }

    private boolean runsThrough(String meeting, Course course) {
        return handing.runsThrough(meeting, wall.mark(), course.isOdd());
    }

    /** Under a rake the course ends with it, unless it meets the masonry of a return wall before. */
    private static Edge raked(Edge level, long in, long slope, boolean shortened) {
        if (slope <= 0 && !shortened) {
            return level;
        }
        if (in > level.at || in == level.at && level.kind == RunEnd.FACE) {
            return new Edge(in, slope > 0 ? RunEnd.RAKE : RunEnd.FACE);
        }
        return in == 0 && level.at < 0 ? new Edge(0, RunEnd.RAKE) : level;
    }
}
