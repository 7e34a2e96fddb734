package org.coursewright.layout.ui.editor;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.LongStream;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.diagram.ui.scale.LengthStep;
import org.coursewright.layout.ui.part.OpeningGrip;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.layout.ui.trial.DragTrial;
import org.coursewright.model.building.Opening;

/** The drag that is going on, and a trial that is ready for the opening that is likely to be dragged next. */
final class OpeningDrags {

    private final BiFunction<Opening, LayoutOutcome, DragTrial> trials;
    private final LengthStep step;
    private Optional<DragTrial> ready = Optional.empty();
    private Optional<DragTrial> going = Optional.empty();

    /**
     * @param trials makes a trial for an opening of a building as it is laid
     * @param step between places
     */
    OpeningDrags(BiFunction<Opening, LayoutOutcome, DragTrial> trials, LengthStep step) {
        this.trials = trials;
        this.step = step;
    }

    /**
     * Gets ready for a drag: reads the project, and lays the wall for the places nearby, so that the first move takes no longer
     * than others.
     *
     * @param opening that may be dragged, if any
     * @param laid how the building is laid, if it is laid as it is now
     */
    void getReady(Optional<Opening> opening, Optional<LayoutOutcome> laid) {
        ready.ifPresent(DragTrial::end);
        ready = opening.flatMap(each -> laid.map(outcome -> trials.apply(each, outcome)));
        ready.ifPresent(trial -> trial.lookAhead(near(OpeningPlace.of(trial.opening()))));
    }

    private List<OpeningPlace> near(OpeningPlace place) {
        return LongStream.of(1, -1, 2, -2).mapToObj(step.step()::times).map(by -> OpeningGrip.OPENING.moved(place, by))
                .filter(each -> each.offset().signum() >= 0).toList();
    }

    /** Whether an opening is being dragged. */
    boolean isGoing() {
        return going.isPresent();
    }

    /**
     * A drag begins.
     *
     * @param opening that is dragged
     * @param laid how the building was laid last, empty if it has not been
     * @param current whether it is laid as it is now; what is ready is of the past otherwise
     */
    void begin(Opening opening, Optional<LayoutOutcome> laid, boolean current) {
        going = ready.filter(each -> current && each.opening().equals(opening))
                .or(() -> laid.map(outcome -> trials.apply(opening, outcome)));
        ready.filter(each -> !going.equals(Optional.of(each))).ifPresent(DragTrial::end);
        ready = Optional.empty();
    }

    /** The opening is dragged on; see {@link DragTrial#ask}. */
    void ask(OpeningPlace place, List<OpeningPlace> next) {
        going.ifPresent(each -> each.ask(place, next));
    }

    /** The drag is over. */
    void over() {
        going.ifPresent(DragTrial::end);
        going = Optional.empty();
    }

    /** Ends all work. */
    void end() {
        over();
        ready.ifPresent(DragTrial::end);
    }
}
