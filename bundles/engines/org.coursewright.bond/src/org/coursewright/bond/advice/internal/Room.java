package org.coursewright.bond.advice.internal;

import java.util.List;

import org.coursewright.bond.Course;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.KeepClear;

/**
 * Whether there is room in a wall for an opening, or its lintel, in another place.
 *
 * @param wall the wall
 * @param keepClear stretches of it where no opening may come
 */
record Room(WallFace wall, List<KeepClear> keepClear) {

    /**
     * Whether it stays inside the wall and clear of openings, lintels and walls bonded in that it is clear of now. A
     * lintel that reaches the wall's end is cut off there, so nobody knows how it would reach if it moved.
     */
    boolean isFor(Obstacle planned, Obstacle changed) {
        return changed.from().isLessThan(changed.to()) && isInside(changed)
                && (planned.kind() != Obstacle.Kind.LINTEL || !touchesEnd(planned) && !touchesEnd(changed))
                && wall.courses().stream().allMatch(course -> isUnderRake(course, planned, changed))
                && wall.obstacles().stream().noneMatch(other -> isNewlyMet(other, planned, changed))
                && (planned.kind() != Obstacle.Kind.OPENING
                        || keepClear.stream().noneMatch(kept -> overlap(kept, changed) && !overlap(kept, planned)));
    }

    private boolean isInside(Obstacle obstacle) {
        return obstacle.from().signum() >= 0 && !obstacle.to().isGreaterThan(wall.length());
    }

    private boolean touchesEnd(Obstacle obstacle) {
        return obstacle.from().signum() <= 0 || !obstacle.to().isLessThan(wall.length());
    }

    private static boolean isUnderRake(Course course, Obstacle planned, Obstacle changed) {
        boolean crosses = planned.firstCourse() <= course.number() && course.number() <= planned.lastCourse();
        return !crosses || !isBelowTop(course, planned) || isBelowTop(course, changed);
    }

    private static boolean isBelowTop(Course course, Obstacle obstacle) {
        return !obstacle.from().isLessThan(course.topFrom()) && !obstacle.to().isGreaterThan(course.topTo());
    }

    private static boolean isNewlyMet(Obstacle other, Obstacle planned, Obstacle changed) {
        boolean counts = other.kind() != Obstacle.Kind.BEAM && !other.mark().equals(planned.mark());
        return counts && overlap(other, changed) && !overlap(other, planned);
    }

    private static boolean overlap(KeepClear kept, Obstacle opening) {
        return kept.from().isLessThan(opening.to()) && opening.from().isLessThan(kept.to());
    }

    private static boolean overlap(Obstacle one, Obstacle other) {
        return one.from().isLessThan(other.to()) && other.from().isLessThan(one.to())
                && one.firstCourse() <= other.lastCourse() && other.firstCourse() <= one.lastCourse();
    }
}
