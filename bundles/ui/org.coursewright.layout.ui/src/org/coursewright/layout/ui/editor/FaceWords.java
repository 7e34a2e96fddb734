package org.coursewright.layout.ui.editor;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.layout.ui.handing.HandingWords;
import org.coursewright.layout.ui.part.FaceState;
import org.eclipse.osgi.util.NLS;

/**
 * What there is to be read of a wall besides its drawing.
 *
 * @param state what is shown
 */
record FaceWords(FaceState state) {

    /** What there is to say about a piece. */
    String of(PlacedPiece piece) {
        return new PieceWords(state.format(), state.drawing()).of(piece);
    }

    /** The wall in words: its mark, the selected piece, and what runs through at its ends. */
    String spoken(String mark) {
        String piece = state.selected().map(this::of).orElse("");
        String corners = state.drawing().map(FaceDrawing::corners).stream()
                .flatMap(each -> Stream.of(each.start(), each.end())).flatMap(Optional::stream)
                .map(HandingWords::of).collect(Collectors.joining("\n"));
        return String.join("\n", NLS.bind(EditorText.accessibleFace, mark), piece, corners);
    }

    /** Why there is no wall to be seen; empty if there is one. */
    static String hint(WallLaying laying, boolean isThere) {
        if (!isThere) {
            return EditorText.deleted;
        }
        if (laying.failure().isPresent()) {
            return NLS.bind(EditorText.failed, laying.failure().get());
        }
        if (laying.isLeftOut()) {
            return EditorText.leftOut;
        }
        return laying.drawing().map(drawing -> drawing.courses().isEmpty() ? EditorText.noCourses : "")
                .orElse(EditorText.laying);
    }
}
