package org.coursewright.layout.ui.plan.part;

import java.util.Optional;

import org.coursewright.layout.ui.plan.paint.FeedbackPainting;
import org.coursewright.layout.ui.plan.paint.PaintedFigure;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;

/** Shows what is on its way, over everything else, until it is taken away. */
public final class Feedback {

    private final PaintedFigure figure = new PaintedFigure();

    /**
     * @param viewer to show it in
     * @param painting what is on its way now
     */
    public void show(EditPartViewer viewer, FeedbackPainting painting) {
        if (figure.getParent() == null) {
            ((LayerManager) viewer.getEditPartRegistry().get(LayerManager.ID)).getLayer(LayerConstants.FEEDBACK_LAYER)
                    .add(figure);
        }
        figure.show(Optional.of(painting.before(viewer.getControl().getSize().x)));
    }

    /** @return what is shown at present */
    public Optional<FeedbackPainting> shown() {
        return figure.getParent() == null ? Optional.empty() : figure.painting().map(FeedbackPainting.class::cast);
    }

    /** Shows nothing any more. */
    public void erase() {
        if (figure.getParent() != null) {
            figure.getParent().remove(figure);
        }
    }
}
