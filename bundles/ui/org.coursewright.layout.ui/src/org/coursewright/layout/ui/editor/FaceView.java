package org.coursewright.layout.ui.editor;

import java.util.Optional;

import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.face.MarkedPieces;
import org.coursewright.layout.ui.face.PieceWalk;
import org.coursewright.layout.ui.face.PlacedPiece;

/** What somebody wants to see of a wall, however it is laid. */
final class FaceView {

    private Optional<PlacedPiece> selected = Optional.empty();
    private Optional<MarkedPieces> marked = Optional.empty();
    private int upTo = Integer.MAX_VALUE;
    private boolean gauges;

    /** The piece that is pointed out. */
    Optional<PlacedPiece> selected() {
        return selected;
    }

    /** Points out another piece, or none. */
    void select(Optional<PlacedPiece> piece) {
        selected = piece;
    }

    /**
     * The piece so many pieces to the right of the selected one, or so many courses above it; the first if none is selected,
     * and the selected one if there is none that is laid up.
     */
    Optional<PlacedPiece> walked(FaceDrawing drawing, int pieces, int courses) {
        PieceWalk walk = new PieceWalk(drawing);
        return selected.map(piece -> pieces == 0 ? walk.up(piece, courses) : walk.along(piece, pieces))
                .orElseGet(walk::first).filter(this::isLaidUp).or(() -> selected);
    }

    private boolean isLaidUp(PlacedPiece piece) {
        return piece.course() <= upTo;
    }

    /** The pieces to be found among all others. */
    Optional<MarkedPieces> marked() {
        return marked;
    }

    /** Marks other pieces, or none. */
    void mark(Optional<MarkedPieces> pieces) {
        marked = pieces;
    }

    /** How many pieces of a wall are marked. */
    long markedIn(FaceDrawing drawing) {
        return marked.stream().flatMap(each -> each.in(drawing)).count();
    }

    /** The highest course that is laid up. */
    int upTo(Optional<FaceDrawing> drawing) {
        return Math.min(upTo, drawing.map(each -> each.courses().size()).orElse(0));
    }

    /** Lays the wall up to a course; a piece further up is no longer pointed out. */
    void layUpTo(int course) {
        upTo = course;
        selected = selected.filter(this::isLaidUp);
    }

    /** Whether the joint gauge of each run is written over it. */
    boolean gauges() {
        return gauges;
    }

    /** Writes the joint gauges, or takes them away. */
    void gauges(boolean written) {
        gauges = written;
    }
}
