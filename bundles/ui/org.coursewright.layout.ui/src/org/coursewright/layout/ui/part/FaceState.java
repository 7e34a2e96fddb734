package org.coursewright.layout.ui.part;

import java.util.List;
import java.util.Optional;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.chain.ChainExtent;
import org.coursewright.layout.ui.chain.ChainLink;
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
 * @param gauges whether the joint gauge of each run is written over it
 * @param height pixels that there are for the wall
 * @param chain walls round the corners, shown beside it; none unless somebody asks for them
 * @param trial how the wall would be laid with an opening elsewhere, while it is dragged
 */
public record FaceState(Optional<FaceDrawing> drawing, FaceInk ink, LengthFormat format, int upTo,
        Optional<PlacedPiece> selected, Optional<MarkedPieces> marked, boolean gauges, int height,
        List<ChainLink> chain, Optional<FaceTrial> trial) {

    public FaceState {
        chain = List.copyOf(chain);
    }

    /**
     * @param scale pixels of lengths
     * @return where things of the wall are
     */
    public FacePlace place(DiagramScale scale) {
        Optional<ChainExtent> extent = extent();
        Length highest = extent.map(ChainExtent::highest).orElse(Length.ZERO);
        FacePlace place = FacePlace.of(scale, highest, height);
        int before = extent.map(ChainExtent::before).map(scale::toPixels).orElse(0);
        return new FacePlace(scale, place.left() + before, place.foot());
    }

    /** @return how much room the wall takes with those beside it, empty while it is not known how it is laid */
    public Optional<ChainExtent> extent() {
        return drawing.map(each -> ChainExtent.of(each, chain));
    }
}
