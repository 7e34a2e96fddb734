package org.coursewright.layout.ui.face;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.bond.CutReason;
import org.coursewright.bond.Effort;
import org.coursewright.bond.Meeting;
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
 * @param cuts why its pieces are cut
 * @param meetings where walls of the building meet
 * @param corners which walls run through at its ends
 * @param effort whether this is a first answer or the answer
 */
public record FaceDrawing(WallFace face, WallLayout layout, TopLine top, List<FaceCourse> courses,
        CutInquest cuts, List<Meeting> meetings, Corners corners, Effort effort) {

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
                return Optional.of(of(wall, outcome, i));
            }
        }
        return Optional.empty();
    }

    private static FaceDrawing of(Wall wall, LayoutOutcome outcome, int index) {
        WallFace face = outcome.faces().get(index);
        WallLayout layout = outcome.result().walls().get(index);
        Length unit = wall.getUnitType().getHeight();
        List<FaceCourse> courses = layout.courses().stream().map(course -> FaceCourse.of(course, unit)).toList();
        return new FaceDrawing(face, layout, TopLine.of(wall, face.length()), courses,
                CutInquest.on(outcome, index), outcome.meetings(),
                Corners.of(outcome, wall.getMark()), outcome.result().effort());
    }

    /**
     * @param other which walls run through at the ends, as it is to be told
     * @return the same drawing with it
     */
    public FaceDrawing with(Corners other) {
        return new FaceDrawing(face, layout, top, courses, cuts, meetings, other, effort);
    }

    /** @return how many pieces of each kind there are */
    public UnitCount count() {
        return UnitCount.of(Stream.of(layout));
    }

    /** @return why its pieces are cut, for every run that has cuts */
    public List<CutReason> cutReasons() {
        return cuts.reasons();
    }

    /**
     * @param piece of the wall
     * @return why pieces of its run are cut, empty if none is or if it is not of this layout
     */
    public Optional<CutReason> cutReason(PlacedPiece piece) {
        return cutReasons().stream().filter(reason -> reason.course() == piece.course()
                && reason.from().equals(piece.run().from()) && reason.to().equals(piece.run().to())).findFirst();
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
