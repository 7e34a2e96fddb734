package org.coursewright.core.bond;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.Obstacle;
import org.coursewright.core.finding.Findings;
import org.coursewright.core.validity.ElementNames;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.LintelType;

/** What the openings of one wall and their lintels take out of its courses. */
final class OpeningObstacles {

    private final Wall wall;
    private final Length wallLength;
    private final CourseLines lines;
    private final LengthFormat format;
    private final Findings findings;
    private final List<Obstacle> obstacles = new ArrayList<>();

    private OpeningObstacles(Wall wall, Length wallLength, CourseLines lines, LengthFormat format, Findings findings) {
        this.wall = wall;
        this.wallLength = wallLength;
        this.lines = lines;
        this.format = format;
        this.findings = findings;
    }

    /** Reads the openings of a wall and tells of sills, heads and lintels that miss the course lines. */
    static List<Obstacle> of(Wall wall, Length wallLength, CourseLines lines, LengthFormat format, Findings findings) {
        OpeningObstacles reading = new OpeningObstacles(wall, wallLength, lines, format, findings);
        wall.getOpenings().forEach(reading::read);
        return List.copyOf(reading.obstacles);
    }

    private void read(Opening opening) {
        Length head = opening.getSill().plus(opening.getHeight());
        Length end = opening.getOffset().plus(opening.getWidth());
        checkLine(opening, "sill", opening.getSill());
        checkLine(opening, "head", head);
        obstacles.add(new Obstacle(Obstacle.Kind.OPENING, opening.getMark(), opening.getOffset(), end,
                lines.courseAbove(opening.getSill()), lines.courseBelow(head), Optional.empty()));
        if (opening.getLintelType() != null) {
            readLintel(opening, opening.getLintelType(), lines.lineAbove(head), end);
        }
    }

    private void checkLine(Opening opening, String what, Length height) {
        if (!lines.isCourseLine(height)) {
            findings.warning("opening." + what + "-off-course", ElementNames.of(opening, wall),
                    "Its %s at %s lies inside a course; the nearest course lines are %s and %s. The course is left out of the opening's width as a whole."
                            .formatted(what, format.format(height), format.format(lines.lineBelow(height)),
                                    format.format(lines.lineAbove(height))));
        }
    }

    private void readLintel(Opening opening, LintelType lintel, Length bottom, Length openingEnd) {
        Length depth = Optional.ofNullable(lintel.getHeight()).orElse(lines.courseHeight());
        Length bearing = Optional.ofNullable(lintel.getBearing()).orElse(Length.ZERO);
        Length from = opening.getOffset().minus(bearing);
        Length to = openingEnd.plus(bearing);
        Length top = bottom.plus(depth);
        if (!lines.isCourseLine(top)) {
            findings.note("lintel.off-course", ElementNames.of(opening, wall),
                    "Its lintel %s is %s deep and ends inside a course: pack it up to the course line at %s."
                            .formatted(lintel.getMark(), format.format(depth), format.format(lines.lineAbove(top))));
        }
        if (from.signum() < 0 || to.isGreaterThan(wallLength)) {
            findings.warning("lintel.beyond-wall", ElementNames.of(opening, wall),
                    "Its lintel %s needs %s of bearing at each end, more than the wall has beside the opening. Have the bearing confirmed by the structural designer."
                            .formatted(lintel.getMark(), format.format(bearing)));
        }
        Length clippedFrom = from.signum() < 0 ? Length.ZERO : from;
        Length clippedTo = to.isGreaterThan(wallLength) ? wallLength : to;
        obstacles.add(new Obstacle(Obstacle.Kind.LINTEL, opening.getMark(), clippedFrom, clippedTo,
                lines.courseAbove(bottom), lines.courseBelow(top), Optional.empty()));
    }
}
