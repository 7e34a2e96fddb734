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
import org.coursewright.takeoff.Volume;
import org.coursewright.takeoff.quantities.CourseQuantities;
import org.coursewright.takeoff.quantities.JointFill;
import org.coursewright.takeoff.quantities.WallQuantities;
import org.coursewright.takeoff.quantities.WallTakeoff;
import org.junit.jupiter.api.Test;

/** Units, mortar, and what openings, lintels and return walls take out are the wall, to the last cube of 1/320 mm (geometry). */
class DemoVolumeTest {

    private int level;
    private int raked;

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
            }
        }
        assertThat(level).isGreaterThan(200);
        assertThat(raked).isPositive();
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
