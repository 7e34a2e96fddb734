package org.coursewright.benchmarks.walls;

import static org.coursewright.benchmarks.walls.UnitType.quarters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.Course;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.measure.Length;

/** A wall in the making, measured in quarters of an inch. */
final class WallDraft {

    private static final Length COURSE_HEIGHT = quarters(18);

    final String mark;
    final UnitType unit;
    final int length;
    final int courseCount;
    private final List<Obstacle> obstacles = new ArrayList<>();
    private WallEnd start = new WallEnd.Free();
    private WallEnd end = new WallEnd.Free();
    private int levelOfFirst = 1;
    private int gableFrom = Integer.MAX_VALUE;
    private int slope;

    WallDraft(String mark, UnitType unit, int length, int courseCount) {
        this.mark = mark;
        this.unit = unit;
        this.length = length;
        this.courseCount = courseCount;
    }

    void start(WallEnd newStart) {
        start = newStart;
    }

    void end(WallEnd newEnd) {
        end = newEnd;
    }

    /** The wall starts so high that its first course lies in this course of the building. */
    void levelOfFirst(int level) {
        levelOfFirst = level;
    }

    /** From the course with index {@code course} on the wall narrows by {@code perCourse} on both sides. */
    void gable(int course, int perCourse) {
        gableFrom = course;
        slope = perCourse;
    }

    void obstruct(Obstacle.Kind kind, int from, int to, int firstCourse, int lastCourse) {
        obstruct(kind, from, to, firstCourse, lastCourse, Optional.empty());
    }

    void obstruct(Obstacle.Kind kind, int from, int to, int firstCourse, int lastCourse, Optional<String> meeting) {
        obstacles.add(new Obstacle(kind, name(kind), quarters(from), quarters(to), firstCourse, lastCourse, meeting));
    }

    /** A lintel is drawn after its opening and goes by the same name. */
    private String name(Obstacle.Kind kind) {
        return kind == Obstacle.Kind.LINTEL
                ? obstacles.get(obstacles.size() - 1).mark()
                : "%s-%s-%d".formatted(mark, kind, obstacles.size() + 1);
    }

    WallFace wall() {
        List<Course> courses = new ArrayList<>();
        for (int index = 0; index < courseCount; index++) {
            courses.add(course(index));
        }
        return new WallFace(mark, quarters(length), unit.stock(), unit.rule(), courses, start, end, obstacles);
    }

    private Course course(int index) {
        int below = Math.max(0, index - gableFrom) * slope;
        int above = Math.max(0, index + 1 - gableFrom) * slope;
        return new Course(index + 1, index + levelOfFirst, COURSE_HEIGHT.times(index), COURSE_HEIGHT,
                quarters(below), quarters(length - below), quarters(above), quarters(length - above));
    }
}
