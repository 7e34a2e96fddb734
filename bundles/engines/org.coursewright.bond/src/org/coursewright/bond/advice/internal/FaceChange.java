package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.Course;
import org.coursewright.bond.InvalidBondRequestException;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.Dimension;
import org.coursewright.bond.advice.KeepClear;
import org.coursewright.measure.Length;

/** Changes a dimension of a wall's face, as far as there is room. */
final class FaceChange {

    private final WallFace wall;
    private final Adjustable adjustable;
    private final Room room;

    /** @param keepClear stretches of the wall where no opening may come */
    FaceChange(WallFace wall, Adjustable adjustable, List<KeepClear> keepClear) {
        this.wall = wall;
        this.adjustable = adjustable;
        room = new Room(wall, keepClear);
    }

    /** @return the dimension's value */
    Length planned() {
        return switch (adjustable.dimension()) {
            case OFFSET, NEAR_JAMB -> opening().from();
            case WIDTH -> opening().to().minus(opening().from());
            case LENGTH -> wall.length();
        };
    }

    /** @return the wall with the dimension changed by so much, or empty if there is no room for it */
    Optional<WallFace> by(Length change) {
        if (change.signum() == 0) {
            return Optional.of(wall);
        }
        return adjustable.dimension() == Dimension.LENGTH ? lengthened(change) : reopened(change);
    }

    private Obstacle opening() {
        return wall.obstacles().stream()
                .filter(obstacle -> obstacle.kind() == Obstacle.Kind.OPENING && isOurs(obstacle)).findFirst()
                .orElseThrow(() -> new InvalidBondRequestException(
                        "Wall %s has no opening %s that could change.".formatted(wall.mark(),
                                adjustable.opening().orElse(""))));
    }

    private boolean isOurs(Obstacle obstacle) {
        return adjustable.opening().filter(obstacle.mark()::equals).isPresent()
                && (obstacle.kind() == Obstacle.Kind.OPENING || obstacle.kind() == Obstacle.Kind.LINTEL);
    }

    private Optional<WallFace> reopened(Length change) {
        Length start = adjustable.dimension() == Dimension.WIDTH ? Length.ZERO : change;
        Length end = adjustable.dimension() == Dimension.NEAR_JAMB ? Length.ZERO : change;
        List<Obstacle> obstacles = new ArrayList<>();
        for (Obstacle obstacle : wall.obstacles()) {
            if (!isOurs(obstacle)) {
                obstacles.add(obstacle);
                continue;
            }
            Obstacle changed = between(obstacle, obstacle.from().plus(start), obstacle.to().plus(end));
            if (!room.isFor(obstacle, changed)) {
                return Optional.empty();
            }
            obstacles.add(changed);
        }
        return Optional.of(new WallFace(wall.mark(), wall.length(), wall.stock(), wall.rule(), wall.courses(),
                wall.start(), wall.end(), obstacles, wall.pins()));
    }

    /** The end moves if it is free, otherwise the start. */
    private Optional<WallFace> lengthened(Length change) {
        Length length = wall.length().plus(change);
        boolean atEnd = wall.end() instanceof WallEnd.Free;
        boolean possible = (atEnd || wall.start() instanceof WallEnd.Free) && length.signum() > 0 && isLevel();
        if (!possible) {
            return Optional.empty();
        }
        Length shift = atEnd ? Length.ZERO : change;
        List<Obstacle> obstacles = new ArrayList<>();
        for (Obstacle obstacle : wall.obstacles()) {
            Obstacle kept = lengthened(obstacle, shift, change);
            if (kept.from().signum() < 0 || kept.to().isGreaterThan(length)) {
                return Optional.empty();
            }
            obstacles.add(kept);
        }
        List<Course> courses = wall.courses().stream().map(
                course -> Course.level(course.number(), course.level(), course.bottom(), course.height(), length))
                .toList();
        return Optional.of(new WallFace(wall.mark(), length, wall.stock(), wall.rule(), courses, wall.start(),
                wall.end(), obstacles, wall.pins().stream().map(pin -> pin.moved(shift)).toList()));
    }

    /** What reaches to both ends of the wall, such as a beam, grows with it; all else stays where it is. */
    private Obstacle lengthened(Obstacle obstacle, Length shift, Length change) {
        boolean whole = obstacle.from().signum() == 0 && obstacle.to().equals(wall.length());
        return whole
                ? between(obstacle, obstacle.from(), obstacle.to().plus(change))
                : between(obstacle, obstacle.from().plus(shift), obstacle.to().plus(shift));
    }

    private boolean isLevel() {
        return wall.courses().stream()
                .allMatch(course -> course.from().signum() == 0 && course.topFrom().signum() == 0
                        && course.to().equals(wall.length()) && course.topTo().equals(wall.length()));
    }

    private static Obstacle between(Obstacle obstacle, Length from, Length to) {
        return new Obstacle(obstacle.kind(), obstacle.mark(), from, to, obstacle.firstCourse(), obstacle.lastCourse(),
                obstacle.meeting());
    }
}
