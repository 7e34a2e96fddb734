package org.coursewright.layout.ui.face;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.bond.UnitCount;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Wall;

/**
 * A laid wall, ready to be drawn.
 *
 * @param face what was asked of the engine
 * @param layout how it is laid
 * @param top of the wall
 * @param courses from the bottom up
 * @param shortLaps where joints lap too little
 */
public record FaceDrawing(WallFace face, WallLayout layout, TopLine top, List<FaceCourse> courses,
        List<ShortLap> shortLaps) {

    /**
     * Reads how a wall is laid.
     *
     * @param wall of the project
     * @param outcome of laying the building
     * @return the drawing, empty if the wall was left out because it cannot be laid as it is
     */
    public static Optional<FaceDrawing> of(Wall wall, LayoutOutcome outcome) {
        List<WallLayout> walls = outcome.result().walls();
        for (int i = 0; i < walls.size(); i++) {
            if (walls.get(i).mark().equals(wall.getMark()) && wall.getUnitType() != null) {
                return Optional.of(of(wall, outcome.faces().get(i), walls.get(i)));
            }
        }
        return Optional.empty();
    }

    private static FaceDrawing of(Wall wall, WallFace face, WallLayout layout) {
        Length unit = wall.getUnitType().getHeight();
        List<FaceCourse> courses = layout.courses().stream().map(course -> FaceCourse.of(course, unit)).toList();
        return new FaceDrawing(face, layout, TopLine.of(wall, face.length()), courses, ShortLap.in(face, layout));
    }

    /** @return how many pieces of each kind there are */
    public UnitCount count() {
        return UnitCount.of(Stream.of(layout));
    }

    /**
     * @param height above the wall's base
     * @return the course there, empty below the first and above the last
     */
    public Optional<FaceCourse> courseAt(Length height) {
        return courses.stream().filter(course -> !height.isLessThan(course.course().bottom()))
                .filter(course -> height.isLessThan(course.top())).findFirst();
    }

    /**
     * @param number of a course
     * @return that course, empty if there is none
     */
    public Optional<FaceCourse> course(int number) {
        return number >= 1 && number <= courses.size() ? Optional.of(courses.get(number - 1)) : Optional.empty();
    }
}
