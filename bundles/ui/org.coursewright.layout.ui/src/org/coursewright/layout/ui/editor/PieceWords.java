package org.coursewright.layout.ui.editor;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.LengthRatio;
import org.eclipse.osgi.util.NLS;

/**
 * What there is to say about a piece.
 *
 * @param format of lengths
 */
record PieceWords(LengthFormat format) {

    /** Course, kind, length, and the joints beside it. */
    String of(PlacedPiece piece) {
        String words = NLS.bind(EditorText.piece, new Object[]{piece.course(), kind(piece), format.format(piece.piece()
                .length())});
        return words + piece.run().joint().map(joint -> NLS.bind(EditorText.pieceJoint, format.format(width(joint))))
                .orElse("");
    }

    private static String kind(PlacedPiece piece) {
        return switch (piece.piece().kind()) {
            case WHOLE -> EditorText.whole;
            case SPECIAL -> EditorText.special;
            case CUT -> EditorText.cut;
        };
    }

    /** To the nearest 1/320 mm, which is finer than any joint can be laid. */
    private static Length width(LengthRatio joint) {
        return Length.ofUnits(joint.toMillimetres().multiply(BigDecimal.valueOf(
                Length.UNITS_PER_MILLIMETRE)).setScale(0, RoundingMode.HALF_UP).longValueExact());
    }
}
