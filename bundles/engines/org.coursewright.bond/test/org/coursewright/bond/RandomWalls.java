package org.coursewright.bond;

import static org.coursewright.bond.WallBuilder.in;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.coursewright.measure.Length;

/** Seeded walls for tests: hostile ones whose dimensions follow no module. */
public final class RandomWalls {

    private static final Length QUARTER = in("1/4");
    private static final Length COURSE = in("4 1/2");

    private final Random random;

    public RandomWalls(long seed) {
        random = new Random(seed);
    }

    private Length between(String least, String most) {
        long from = in(least).units() / QUARTER.units();
        long to = in(most).units() / QUARTER.units();
        return QUARTER.times(from + random.nextLong(to - from + 1));
    }

    /** A wall with up to {@code openings} openings under lintels, of any ends, and the meetings of these. */
    public BondRequest wall(String least, String most, int mostCourses, int openings) {
        Length length = between(least, most);
        int courses = 2 + random.nextInt(mostCourses - 1);
        PieceStock stock = random.nextBoolean() ? WallBuilder.stock("14") : WallBuilder.stock("14", "6 3/4");
        WallBuilder wall = WallBuilder.wall(length).courses(courses).stocked(stock).start(end("S")).end(end("E"));
        addOpenings(wall, length, courses, random.nextInt(openings + 1));
        WallFace face = wall.build();
        return new BondRequest(List.of(face), meetings(face));
    }

    private WallEnd end(String meeting) {
        return switch (random.nextInt(4)) {
            case 0 -> new WallEnd.Free();
            case 1 -> new WallEnd.Tied();
            case 2 -> new WallEnd.Bonded(meeting, in("10"));
            default -> new WallEnd.Corner(meeting, in("10"));
        };
    }

    private void addOpenings(WallBuilder wall, Length length, int courses, int openings) {
        Length at = between("3", "40");
        for (int opening = 0; opening < openings; opening++) {
            Length width = between("20", "60");
            Length to = at.plus(width);
            int first = 1 + random.nextInt(courses);
            int last = Math.min(courses, first + random.nextInt(courses));
            if (!to.isLessThan(length)) {
                return;
            }
            wall.obstacle(Obstacle.Kind.OPENING, at, to, first, last);
            Length bearing = between("4", "12");
            if (last + 1 <= courses && random.nextBoolean()) {
                wall.obstacle(Obstacle.Kind.LINTEL, at.minus(bearing), to.plus(bearing), last + 1,
                        Math.min(courses, last + 1 + random.nextInt(2)));
            }
            at = to.plus(between("2", "70"));
        }
    }

    private List<Meeting> meetings(WallFace wall) {
        List<Meeting> meetings = new ArrayList<>();
        for (WallEnd end : List.of(wall.start(), wall.end())) {
            boolean through = random.nextBoolean();
            Optional<String> pinned = through ? Optional.of(wall.mark()) : Optional.empty();
            if (end instanceof WallEnd.Corner corner) {
                meetings.add(new Meeting(corner.meeting(), Meeting.Kind.CORNER, List.of(wall.mark()), pinned));
            } else if (end instanceof WallEnd.Bonded bonded) {
                meetings.add(new Meeting(bonded.meeting(), Meeting.Kind.TEE, List.of(wall.mark()), pinned));
            }
        }
        return meetings;
    }

    /** A gable: every course shorter by {@code slope} at both ends. */
    public BondRequest gable(String base, String slope) {
        Length length = in(base);
        Length step = in(slope);
        List<Course> courses = new ArrayList<>();
        Length from = Length.ZERO;
        for (int number = 1; length.minus(from.times(2)).isGreaterThan(step.times(3)); number++) {
            Length next = number < 4 ? Length.ZERO : from.plus(step);
            courses.add(new Course(number, number, COURSE.times(number - 1L), COURSE, from, length.minus(from), next,
                    length.minus(next)));
            from = next;
        }
        return WallBuilder.wall(length).courses(courses).alone();
    }

    /** The wall seen from its other side. */
    public static BondRequest mirrored(BondRequest request) {
        WallFace wall = request.walls().get(0);
        Length length = wall.length();
        List<Obstacle> obstacles = wall.obstacles().stream()
                .map(obstacle -> new Obstacle(obstacle.kind(), obstacle.mark(), length.minus(obstacle.to()),
                        length.minus(obstacle.from()), obstacle.firstCourse(), obstacle.lastCourse(),
                        obstacle.meeting()))
                .toList();
        WallFace mirrored = new WallFace(wall.mark(), length, wall.stock(), wall.rule(), wall.courses(), wall.end(),
                wall.start(), obstacles);
        return new BondRequest(List.of(mirrored), request.meetings());
    }

    /** The wall with joints that may be an eighth of an inch narrower and wider. */
    public static BondRequest widened(BondRequest request) {
        WallFace wall = request.walls().get(0);
        JointRule rule = wall.rule();
        JointRule wide = new JointRule(rule.leastLap(), rule.least().minus(in("1/8")), rule.nominal(),
                rule.most().plus(in("1/8")));
        WallFace widened = new WallFace(wall.mark(), wall.length(), wall.stock(), wide, wall.courses(), wall.start(),
                wall.end(), wall.obstacles());
        return new BondRequest(List.of(widened), request.meetings());
    }
}
