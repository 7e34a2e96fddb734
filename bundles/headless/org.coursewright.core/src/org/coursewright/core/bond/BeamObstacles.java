package org.coursewright.core.bond;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.Obstacle;
import org.coursewright.core.finding.Findings;
import org.coursewright.core.validity.ElementNames;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.BondBeam;
import org.coursewright.model.building.Wall;

/** What bond beams take out of the courses of one wall. A beam on top of the wall takes nothing. */
final class BeamObstacles {

    private BeamObstacles() {
    }

    static List<Obstacle> of(Wall wall, List<BondBeam> beams, Length wallLength, CourseLines lines, Length top,
            LengthFormat format, Findings findings) {
        return beams.stream().filter(beam -> beam.getWalls().contains(wall)).filter(beam -> beam.getDepth() != null)
                .map(beam -> obstacle(wall, beam, wallLength, lines, top, format, findings)).flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Obstacle> obstacle(Wall wall, BondBeam beam, Length wallLength, CourseLines lines,
            Length top, LengthFormat format, Findings findings) {
        Length bottom = beam.getBottom().minus(wall.getBase());
        if (!bottom.isLessThan(top) || bottom.plus(beam.getDepth()).signum() <= 0) {
            return Optional.empty();
        }
        if (!lines.isCourseLine(bottom)) {
            findings.warning("beam.off-course", ElementNames.of(wall),
                    "Bond beam %s at %s above the base lies inside a course; the nearest course lines are %s and %s."
                            .formatted(beam.getMark(), format.format(bottom), format.format(lines.lineBelow(bottom)),
                                    format.format(lines.lineAbove(bottom))));
        }
        return Optional.of(new Obstacle(Obstacle.Kind.BEAM, String.valueOf(beam.getMark()), Length.ZERO, wallLength,
                Math.max(1, lines.courseAbove(bottom)), lines.courseBelow(bottom.plus(beam.getDepth())),
                Optional.empty()));
    }
}
