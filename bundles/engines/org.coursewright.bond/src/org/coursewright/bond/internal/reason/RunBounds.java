package org.coursewright.bond.internal.reason;

import java.util.Optional;

import org.coursewright.bond.Course;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.RunBound;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.run.RunSpan;

/** Tells what the runs of a wall end at. */
final class RunBounds {

    private final WallFace wall;
    private final Handing handing;

    RunBounds(WallFace wall, Handing handing) {
        this.wall = wall;
        this.handing = handing;
    }

    RunBound start(RunSpan run) {
        Course course = wall.courses().get(run.course());
        return bound(run.start(), course, wall.start(), wall.obstacles().stream()
                .filter(obstacle -> obstacle.to().units() == run.from() && interrupts(obstacle, course, run.start()))
                .findFirst());
    }

    RunBound end(RunSpan run) {
        Course course = wall.courses().get(run.course());
        return bound(run.end(), course, wall.end(), wall.obstacles().stream()
                .filter(obstacle -> obstacle.from().units() == run.to() && interrupts(obstacle, course, run.end()))
                .findFirst());
    }

    private boolean interrupts(Obstacle obstacle, Course course, RunEnd end) {
        return obstacle.kind().runEnd() == end && obstacle.firstCourse() <= course.number()
                && course.number() <= obstacle.lastCourse()
                && obstacle.meeting().map(id -> handing.endingWallRunsThrough(id, course.isOdd())).orElse(true);
    }

    private RunBound bound(RunEnd end, Course course, WallEnd wallEnd, Optional<Obstacle> obstacle) {
        if (end == RunEnd.RAKE) {
            return new RunBound.Raked();
        }
        return obstacle.<RunBound>map(RunBound.Interrupted::new).orElseGet(() -> bound(wallEnd, course));
    }

    private RunBound bound(WallEnd end, Course course) {
        if (!end.beside().contains(course.level())) {
            return new RunBound.Free();
        }
        if (end instanceof WallEnd.Corner corner) {
            return new RunBound.Corner(corner.meeting(), runsThrough(corner.meeting(), course));
        } else if (end instanceof WallEnd.Bonded bonded) {
            return new RunBound.Bonded(bonded.meeting(), runsThrough(bonded.meeting(), course));
        }
        return end instanceof WallEnd.Tied ? new RunBound.Tied() : new RunBound.Free();
    }

    private boolean runsThrough(String meeting, Course course) {
        return handing.runsThrough(meeting, wall.mark(), course.isOdd());
    }
}
