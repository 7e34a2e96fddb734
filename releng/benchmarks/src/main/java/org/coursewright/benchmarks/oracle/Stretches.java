package org.coursewright.benchmarks.oracle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.coursewright.bond.Course;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;

/** Finds what has to be filled in every course of a wall. */
public final class Stretches {

    /** @param against the masonry that is there in every course, or empty */
    private record Edge(long at, RunEnd kind, String against) {

        Edge(long at, RunEnd kind) {
            this(at, kind, "");
        }

        Edge moved(long to) {
            return new Edge(to, kind, against);
        }
    }

    private record Gap(Edge near, Edge far) {
    }

    private final WallFace wall;
    private final Handing handing;

    private Stretches(WallFace wall, Handing handing) {
        this.wall = wall;
        this.handing = handing;
    }

    /** @return the stretches of {@code wall} from the bottom up, each course's from start to end */
    public static List<Stretch> of(WallFace wall, Handing handing) {
        Stretches finder = new Stretches(wall, handing);
        List<Stretch> found = new ArrayList<>();
        for (int index = 0; index < wall.courses().size(); index++) {
            finder.collect(index, found);
        }
        return found;
    }

    private void collect(int index, List<Stretch> found) {
        Course course = wall.courses().get(index);
        Edge last = atEnd(course);
        Edge from = atStart(course);
        for (Gap gap : gaps(course)) {
            if (from.at < Math.min(gap.near.at, last.at)) {
                found.add(stretch(index, course, from, gap.near.at < last.at ? gap.near : last));
            }
            from = stronger(from, gap.far, 1);
        }
        if (from.at < last.at) {
            found.add(stretch(index, course, from, last));
        }
    }

    private static Stretch stretch(int index, Course course, Edge from, Edge to) {
        boolean rakedStart = course.topFrom().isGreaterThan(course.from());
        boolean rakedEnd = course.topTo().isLessThan(course.to());
        return new Stretch(index, from.at, to.at, from.kind, to.kind, from.against, to.against,
                rakedStart ? course.topFrom().units() : Long.MIN_VALUE,
                rakedEnd ? course.topTo().units() : Long.MAX_VALUE);
    }

    /** What parts the course, overlapping obstacles made one; masonry (a joint) decides where two begin or end alike. */
    private List<Gap> gaps(Course course) {
        List<Gap> merged = new ArrayList<>();
        for (Obstacle obstacle : parting(course)) {
            Edge near = new Edge(obstacle.from().units(), obstacle.kind().runEnd(), against(obstacle));
            Edge far = near.moved(obstacle.to().units());
            Gap previous = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (previous != null && near.at <= previous.far.at) {
                merged.set(merged.size() - 1,
                        new Gap(stronger(previous.near, near, -1), stronger(previous.far, far, 1)));
            } else {
                merged.add(new Gap(near, far));
            }
        }
        return merged;
    }

    private static String against(Obstacle obstacle) {
        boolean fixed = obstacle.kind().runEnd() == RunEnd.JOINT && obstacle.meeting().isEmpty();
        return fixed ? obstacle.kind() + " " + obstacle.mark() : "";
    }

    /** The edge that lies further towards {@code direction}, the joint if they lie together. */
    private static Edge stronger(Edge one, Edge other, int direction) {
        if (one.at == other.at) {
            return one.kind == RunEnd.JOINT ? one : other;
        }
        return (one.at - other.at) * direction > 0 ? one : other;
    }

    private List<Obstacle> parting(Course course) {
        return wall.obstacles().stream()
                .filter(obstacle -> obstacle.firstCourse() <= course.number()
                        && obstacle.lastCourse() >= course.number())
                .filter(obstacle -> obstacle.meeting().isEmpty()
                        || handing.parts(obstacle.meeting().get(), course))
                .sorted(Comparator.comparing(Obstacle::from)).toList();
    }

    private Edge atStart(Course course) {
        Edge level = level(wall.start(), course);
        long shortened = course.from().units();
        return raked(level, shortened, course.topFrom().units() > shortened);
    }

    private Edge atEnd(Course course) {
        Edge level = level(wall.end(), course);
        long shortened = wall.length().minus(course.to()).units();
        Edge inwards = raked(level, shortened, course.topTo().isLessThan(course.to()));
        return inwards.moved(wall.length().units() - inwards.at);
    }

    /** Where the course ends, measured inwards from the wall's outer end, if nothing is raked. */
    private Edge level(WallEnd end, Course course) {
        if (course.level() < end.beside().first() || course.level() > end.beside().last()) {
            return new Edge(0, RunEnd.FACE);
        }
        if (end instanceof WallEnd.Corner corner) {
            return handing.runsThrough(corner.meeting(), wall.mark(), course)
                    ? new Edge(0, RunEnd.FACE)
                    : new Edge(corner.setback().units(), RunEnd.JOINT);
        }
        if (end instanceof WallEnd.Bonded bonded) {
            return handing.runsThrough(bonded.meeting(), wall.mark(), course)
                    ? new Edge(-bonded.reach().units(), RunEnd.FACE)
                    : new Edge(0, RunEnd.JOINT);
        }
        return end instanceof WallEnd.Tied ? new Edge(0, RunEnd.JOINT, "tie") : new Edge(0, RunEnd.FACE);
    }

    /** Under a gable the course ends where the roof lets it, unless the masonry it meets stops it before. */
    private static Edge raked(Edge level, long shortened, boolean sloped) {
        boolean stoppedBefore = shortened < level.at || shortened == level.at && level.kind == RunEnd.JOINT;
        if (stoppedBefore || !sloped && shortened == 0) {
            return level;
        }
        return new Edge(shortened, sloped ? RunEnd.RAKE : RunEnd.FACE);
    }
}
