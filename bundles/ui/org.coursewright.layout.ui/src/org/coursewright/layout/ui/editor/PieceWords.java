package org.coursewright.layout.ui.editor;

import java.util.Optional;
import java.util.stream.Collectors;

import org.coursewright.bond.CutReason;
import org.coursewright.bond.Piece;
import org.coursewright.core.bond.CutWords;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.layout.ui.face.RunJoint;
import org.coursewright.measure.LengthFormat;
import org.eclipse.osgi.util.NLS;

/**
 * What there is to say about a piece.
 *
 * @param format of lengths
 * @param drawing of the wall, empty while it is not known how it is laid
 */
record PieceWords(LengthFormat format, Optional<FaceDrawing> drawing) {

    /** Course, kind, length, the joints beside it, and why it is cut. */
    String of(PlacedPiece piece) {
        String words = NLS.bind(EditorText.piece, new Object[]{piece.course(), kind(piece), format.format(piece.piece()
                .length())});
        return words + RunJoint.of(piece.run()).map(joint -> NLS.bind(EditorText.pieceJoint, format.format(joint)))
                .orElse("") + why(piece);
    }

    private String why(PlacedPiece piece) {
        if (piece.piece().kind() != Piece.Kind.CUT) {
            return "";
        }
        return drawing.flatMap(laid -> laid.cutReason(piece).map(reason -> why(laid, reason))).orElse("");
    }

    private String why(FaceDrawing laid, CutReason reason) {
        CutWords words = new CutWords(format, laid.layout().mark(), laid.meetings());
        return reason.causes().stream().map(cause -> NLS.bind(EditorText.pieceWhy, words.of(reason, cause)))
                .collect(Collectors.joining());
    }

    private static String kind(PlacedPiece piece) {
        return kind(piece.piece().kind());
    }

    static String kind(Piece.Kind kind) {
        return switch (kind) {
            case WHOLE -> EditorText.whole;
            case SPECIAL -> EditorText.special;
            case CUT -> EditorText.cut;
        };
    }
}
