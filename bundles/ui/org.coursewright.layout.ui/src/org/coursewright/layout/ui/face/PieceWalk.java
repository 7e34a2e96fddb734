package org.coursewright.layout.ui.face;

import java.util.Optional;

import org.coursewright.measure.Length;

/**
 * From piece to piece by the arrow keys.
 *
 * @param drawing of the wall
 */
public record PieceWalk(FaceDrawing drawing) {

    /**
     * @param from a piece of the wall, perhaps of an earlier layout
     * @param steps to the right, less than zero to the left
     * @return the piece so many pieces on in the same course, the last if there are fewer
     */
    public Optional<PlacedPiece> along(PlacedPiece from, int steps) {
        return drawing.course(from.course()).filter(course -> !course.pieces().isEmpty()).map(course -> {
            int index = course.firstEndingAfter(from.from()) + steps;
            return course.pieces().get(Math.max(0, Math.min(course.pieces().size() - 1, index)));
        });
    }

    /**
     * @param from a piece of the wall
     * @param courses upwards, less than zero downwards
     * @return the piece over or under its middle so many courses on, empty if there is no such course
     */
    public Optional<PlacedPiece> up(PlacedPiece from, int courses) {
        Length middle = Length.ofUnits((from.from().units() + from.to().units()) / 2);
        return drawing.course(from.course() + courses).filter(course -> !course.pieces().isEmpty()).map(course -> {
            int index = course.firstEndingAfter(middle);
            return course.pieces().get(Math.min(course.pieces().size() - 1, index));
        });
    }

    /** @return the first piece of the first course */
    public Optional<PlacedPiece> first() {
        return drawing.courses().stream().flatMap(course -> course.pieces().stream()).findFirst();
    }
}
