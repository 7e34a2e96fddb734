package org.coursewright.core.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;

import org.coursewright.bond.BondSolver;
import org.coursewright.bond.Course;
import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.Run;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.core.bond.BuildingLayout;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.model.project.Project;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Volume;
import org.coursewright.takeoff.quantities.CourseQuantities;
import org.coursewright.takeoff.quantities.JointFill;
import org.coursewright.takeoff.quantities.LaidCourse;
import org.coursewright.takeoff.quantities.WallQuantities;
import org.coursewright.takeoff.quantities.WallTakeoff;
import org.junit.jupiter.api.Test;

/** Units, mortar, and what openings, lintels and return walls take out are the wall, to the last cube of 1/320 mm (geometry). */
class DemoVolumeTest {

    private int level;
    private int raked;
    private int exactlyRaked;

    @Test
    void unitsMortarAndOpeningsAreTheWallExactly() throws Exception {
        Project project = new ProjectStore().load(demo());
        LayoutOutcome layout = new BuildingLayout(BondSolver.standard()).lay(project, Progress.NONE);
        ProjectBrief brief = ProjectBrief.of(project);
        for (int i = 0; i < layout.faces().size(); i++) {
            WallFace face = layout.faces().get(i);
            WallBrief wall = brief.wall(face.mark()).orElseThrow();
            WallQuantities measured = new WallTakeoff(JointFill.FULL)
                    .measure(LayoutTranslator.wall(layout.result().walls().get(i), wall));
            List<CourseLayout> courses = layout.result().walls().get(i).courses();
            for (int c = 0; c < courses.size(); c++) {
                check(face, wall.thickness(), courses.get(c), measured.courses().get(c));
                checkRaked(wall.thickness(), courses.get(c), measured, c);
            }
        }
        assertThat(level).isGreaterThan(200);
        assertThat(raked).isPositive();
        assertThat(exactlyRaked).isGreaterThan(3);
    }

    private void check(WallFace face, Length thickness, CourseLayout laid, CourseQuantities measured) {
        Course course = laid.course();
        Volume expected = Volume.of(masonry(face, laid), course.height(), thickness);
        if (course.from().equals(course.topFrom()) && course.to().equals(course.topTo())) {
            level++;
            assertThat(measured.masonry()).as("%s/%d", face.mark(), course.number()).isEqualTo(expected);
        } else {
            raked++;
            assertThat(measured.masonry()).as("%s/%d", face.mark(), course.number()).isLessThan(expected);
        }
    }

    /**
     * A raked course of one run is its bed joint, the trapezium of its units, and half of the head joints under the rake, since
     * those count in full; to half of 1/320 mm for the top of each piece, which is rounded to that.
     */
    private void checkRaked(Length thickness, CourseLayout laid, WallQuantities wall, int index) {
        Course course = laid.course();
        boolean square = course.from().equals(course.topFrom()) && course.to().equals(course.topTo());
        if (square || laid.runs().size() != 1
                || !laid.runs().get(0).length().equals(course.to().minus(course.from()))) {
            return;
        }
        exactlyRaked++;
        LaidCourse measured = wall.wall().courses().get(index);
        Run run = laid.runs().get(0);
        Length tops = course.topTo().minus(course.topFrom());
        Volume trapezium = Volume.of(run.length().plus(tops), measured.height(), thickness).times(Fraction.of(1, 2));
        Fraction joints = jointsUnderRake(run, course);
        Volume underRake = new Volume(joints.times(measured.height().units()).times(thickness.units()))
                .times(Fraction.of(
                        1, 2));
        Volume expected = Volume.of(run.length(), measured.bedJoint(), thickness).plus(trapezium).plus(underRake);
        Volume slack = Volume.of(Length.ofUnits(run.pieces().size()), measured.height(), thickness).times(Fraction.of(1,
                4));
        Volume off = wall.courses().get(index).masonry().minus(expected);
        assertThat(off.cubes().signum() < 0 ? off.times(Fraction.of(-1)) : off).as("%s/%d", wall.wall().mark(), course
                .number()).isLessThanOrEqualTo(slack);
    }

    /** @return how much of the head joints, in 1/320 mm, lies outside the top of the course */
    private static Fraction jointsUnderRake(Run run, Course course) {
        Fraction joint = run.jointCount() == 0
                ? Fraction.ZERO
                : Fraction.of(run.joint().orElseThrow().total().units(), run.jointCount());
        Fraction from = Fraction.of(course.topFrom().units());
        Fraction to = Fraction.of(course.topTo().units());
        Fraction position = Fraction.of(run.from().units());
        Fraction outside = Fraction.ZERO;
        for (int i = 0; i < run.pieces().size() - 1; i++) {
            position = position.plus(Fraction.of(run.pieces().get(i).length().units()));
            Fraction end = position.plus(joint);
            Fraction inside = least(end, to).minus(greatest(position, from));
            outside = outside.plus(joint).minus(greatest(inside, Fraction.ZERO));
            position = end;
        }
        return outside;
    }

    private static Fraction least(Fraction one, Fraction other) {
        return one.compareTo(other) < 0 ? one : other;
    }

    private static Fraction greatest(Fraction one, Fraction other) {
        return one.compareTo(other) > 0 ? one : other;
    }

    /** Length of the course at its bottom, less what is taken out of it. */
    private static Length masonry(WallFace face, CourseLayout laid) {
        Course course = laid.course();
        Length reached = course.from().plus(stop(face.start(), laid.runs().get(0).from().minus(course.from())));
        Run last = laid.runs().get(laid.runs().size() - 1);
        Length end = course.to().minus(stop(face.end(), course.to().minus(last.to())));
        Length masonry = Length.ZERO;
        for (Obstacle obstacle : face.obstacles().stream().filter(obstacle -> obstacle.meeting().isEmpty())
                .filter(obstacle -> obstacle.firstCourse() <= course.number() && course.number() <= obstacle
                        .lastCourse())
                .sorted(Comparator.comparing(Obstacle::from)).toList()) {
            if (obstacle.from().isGreaterThan(reached)) {
                masonry = masonry.plus(obstacle.from().minus(reached));
            }
            reached = obstacle.to().isGreaterThan(reached) ? obstacle.to() : reached;
        }
        return end.isGreaterThan(reached) ? masonry.plus(end.minus(reached)) : masonry;
    }

    /** A course stops short of a corner by the wall that runs through there, or not at all. */
    private static Length stop(WallEnd end, Length gap) {
        return end instanceof WallEnd.Corner corner && corner.setback().equals(gap) ? gap : Length.ZERO;
    }

    private static Path demo() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(folder.resolve("releng/demo"))) {
            folder = folder.getParent();
        }
        return folder.resolve("releng/demo/clinic.coursewright");
    }
}
