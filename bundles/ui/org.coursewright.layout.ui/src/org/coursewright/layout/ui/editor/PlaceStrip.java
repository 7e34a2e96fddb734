package org.coursewright.layout.ui.editor;

import java.util.Optional;
import java.util.function.Consumer;

import org.coursewright.layout.ui.paint.FaceInk;
import org.coursewright.layout.ui.part.OpeningPart;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.layout.ui.strip.AdviceStrip;
import org.coursewright.layout.ui.strip.StripContent;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.command.MoveOpeningCommand;
import org.coursewright.model.edit.command.ProjectCommand;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.widgets.Composite;

/** Connects the strip under a wall with the opening that is selected or dragged. */
final class PlaceStrip {

    private final FaceTrials trials;
    private final Consumer<ProjectCommand> execute;
    private final AdviceStrip strip;

    /**
     * @param parent of the strip
     * @param trials that know what places need
     * @param execute makes an edit
     */
    PlaceStrip(Composite parent, FaceTrials trials, Consumer<ProjectCommand> execute) {
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
        viewer.addSelectionChangedListener(event -> trials.advise(selected(viewer)));
    }

    private static Optional<Opening> selected(GraphicalViewer viewer) {
        return viewer.getSelectedEditParts().size() == 1
                && viewer.getSelectedEditParts().get(0) instanceof OpeningPart part
                        ? Optional.of(part.element())
                        : Optional.empty();
    }

    /** Shows what is known now. */
    void show(FaceInk ink, LengthFormat format) {
        Optional<Length> at = trials.place().map(OpeningPlace::offset);
        strip.show(new StripContent(trials.advised().map(ElementLabels::of), trials.cuts(), at, ink, format));
    }

    private void bring(Length offset) {
        trials.advised().filter(opening -> !opening.getOffset().equals(offset))
                .ifPresent(opening -> execute.accept(new MoveOpeningCommand(opening, offset)));
    }
}
