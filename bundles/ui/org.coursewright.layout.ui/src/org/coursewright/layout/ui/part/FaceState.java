package org.coursewright.layout.ui.part;

import java.util.Optional;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.face.MarkedPieces;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.layout.ui.paint.FaceInk;
import org.coursewright.layout.ui.paint.FacePlace;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;

/**
 * What an editor shows of a wall at present, beside the model.
 *
 * @param drawing how the wall is laid, empty while that is not known
 * @param ink to draw with
 * @param format of lengths
 * @param upTo number of the highest course that is laid up
 * @param selected a piece to be pointed out
 * @param marked pieces to be found among all others
 * @param height pixels that there are for the wall
 * @param trial how the wall would be laid with an opening elsewhere, while it is dragged
 */
public record FaceState(Optional<FaceDrawing> drawing, FaceInk ink, LengthFormat format, int upTo,
        Optional<PlacedPiece> selected, Optional<MarkedPieces> marked, int height, Optional<FaceTrial> trial) {

    /**
     * @param scale pixels of lengths
     * @return where things of the wall are
     */
    public FacePlace place(DiagramScale scale) {
        Length highest = drawing.map(each -> each.top().highest()).orElse(Length.ZERO);
        return FacePlace.of(scale, highest, height);
    }
}
