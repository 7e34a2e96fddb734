package org.coursewright.takeoff.quantities;

import java.util.List;
import java.util.Objects;

import org.coursewright.measure.Length;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Volume;

/**
 * Measures laid walls: counts pieces and computes volumes of units and mortar, exactly. Time grows with the number of
 * pieces.
 */
public final class WallTakeoff {

    private static final Fraction HALF = Fraction.of(1, 2);

    private final JointFill fill;

    /** @param fill how much of the joints is filled */
    public WallTakeoff(JointFill fill) {
        this.fill = Objects.requireNonNull(fill, "fill");
    }

    /**
     * @param wall as laid
     * @return what it takes
     */
    public WallQuantities measure(LaidWall wall) {
        List<CourseQuantities> courses = wall.courses().stream().map(course -> course(wall.thickness(), course))
                .toList();
        return new WallQuantities(wall, courses,
                courses.stream().map(CourseQuantities::pieces).reduce(PieceTally.NONE, PieceTally::plus),
                courses.stream().map(CourseQuantities::units).reduce(Volume.ZERO, Volume::plus),
                courses.stream().map(CourseQuantities::mortar).reduce(MortarVolumes.NONE, MortarVolumes::plus));
    }

    private CourseQuantities course(Length thickness, LaidCourse course) {
        PieceTally pieces = PieceTally.NONE;
        Volume units = Volume.ZERO;
        MortarVolumes mortar = MortarVolumes.NONE;
        for (LaidRun run : course.runs()) {
            pieces = pieces.plus(PieceTally.of(run));
            units = units.plus(units(run, course.height(), thickness));
            mortar = mortar.plus(mortar(run, course, thickness));
        }
        return new CourseQuantities(course.number(), pieces, units, mortar);
    }

    /** A piece cut along a rake is a trapezium: its mean length counts. */
    private static Volume units(LaidRun run, Length height, Length thickness) {
        Length bottomAndTop = run.pieces().stream().map(piece -> piece.length().plus(piece.topLength())).reduce(
                Length.ZERO, Length::plus);
        return Volume.of(bottomAndTop, height, thickness).times(HALF);
    }

    MortarVolumes mortar(LaidRun run, LaidCourse course, Length thickness) {
        Volume bed = Volume.of(run.length(), course.bedJoint(), thickness);
        Volume joints = Volume.of(run.jointTotal(), course.height(), thickness);
        Volume besideCuts = run.jointCount() == 0
                ? Volume.ZERO
                : joints.times(Fraction.of(run.jointsBesideCuts(), run.jointCount()));
        Volume filledBed = bed.times(fill.bed());
        Volume filledJoints = joints.times(fill.head());
        Volume filledBesideCuts = besideCuts.times(fill.head());
        return new MortarVolumes(filledBed, filledJoints.minus(filledBesideCuts), filledBesideCuts,
                bed.plus(joints).minus(filledBed).minus(filledJoints));
    }
}
