package org.coursewright.layout.ui.face;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

import org.coursewright.bond.Piece;

/**
 * Which pieces of a wall somebody wants to see among all others.
 *
 * @param kind only pieces of that kind, or of every kind
 * @param course only pieces of that course, or of all courses
 */
public record MarkedPieces(Optional<Piece.Kind> kind, OptionalInt course) {

    public MarkedPieces {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(course, "course");
    }

    /**
     * @param drawing of the wall
     * @return those pieces, from the bottom up and from start to end
     */
    public Stream<PlacedPiece> in(FaceDrawing drawing) {
        return drawing.courses().stream().filter(each -> course.isEmpty() || course.getAsInt() == each.course()
                .number()).flatMap(each -> each.pieces().stream()).filter(piece -> kind.isEmpty() || kind.get() == piece
                        .piece().kind());
    }
}
