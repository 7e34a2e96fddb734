package org.coursewright.layout.ui.editor;

import java.util.Optional;
import java.util.function.Consumer;

import org.coursewright.diagram.ui.history.EditCommand;
import org.coursewright.layout.ui.paint.FaceInk;
import org.coursewright.layout.ui.part.OpeningEdits;
import org.coursewright.layout.ui.part.OpeningPart;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.layout.ui.strip.AdviceStrip;
import org.coursewright.layout.ui.strip.StripContent;
import org.coursewright.layout.ui.trial.HeldOpening;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.ElementLabels;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.widgets.Composite;

/** Connects the strip under a wall with the opening that is selected or dragged. */
final class PlaceStrip {

    private final FaceTrials trials;
    private final Consumer<EditCommand> execute;
    private final AdviceStrip strip;

    /**
     * @param parent of the strip
     * @param trials that know what places need
     * @param execute makes an edit
     */
    PlaceStrip(Composite parent, FaceTrials trials, Consumer<EditCommand> execute) {
        this.trials = trials;
        this.execute = execute;
        this.strip = new AdviceStrip(parent, this::bring);
    }

    /** The strip itself. */
    AdviceStrip control() {
        return strip;
    }

    /** From now on shows the places of the opening that is selected. */
    void follow(GraphicalViewer viewer) {
        viewer.addSelectionChangedListener(event -> trials.selected(selected(viewer)));
    }

    private static Optional<Opening> selected(GraphicalViewer viewer) {
        return viewer.getSelectedEditParts().size() == 1
                && viewer.getSelectedEditParts().get(0) instanceof OpeningPart part
                        ? Optional.of(part.element())
                        : Optional.empty();
    }

    /** Shows what is known now. */
    void show(FaceInk ink, LengthFormat format) {
        strip.show(new StripContent(trials.advised().map(each -> ElementLabels.of(each.opening())), trials.cuts(),
                trials.place(), ink, format));
    }

    private void bring(OpeningPlace place) {
        trials.advised().map(HeldOpening::opening).filter(opening -> !OpeningPlace.of(opening).equals(place))
                .ifPresent(opening -> execute.accept(OpeningEdits.bring(opening, place)));
    }
}
