package org.coursewright.layout.ui.trial;

import java.util.concurrent.Executor;
import java.util.function.Consumer;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.trial.OpeningTrial;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Opening;

/**
 * Lays a wall in the background for the newest place that an opening is dragged to: first soon, then, while the mouse rests,
 * as well as it can be.
 */
public final class DragTrial {

    private final Opening opening;
    private final OpeningTrial trial;
    private final Executor display;
    private final Consumer<Tried> tell;
    private final NewestJob<OpeningPlace> job;
    private OpeningPlace asked;
    private boolean ended;

    /**
     * Reads the project; to be made in the user interface thread.
     *
     * @param opening that is dragged
     * @param laid how the building is laid at present
     * @param display runs what is told in the user interface thread
     * @param tell told there each time there is an answer, until the trial ends
     */
    public DragTrial(Opening opening, LayoutOutcome laid, Executor display, Consumer<Tried> tell) {
        this.opening = opening;
        this.trial = new OpeningTrial(opening, laid);
        this.display = display;
        this.tell = tell;
        this.job = new NewestJob<>(TrialText.dragJob, this::lay);
        this.asked = OpeningPlace.of(opening);
    }

    /** @return the opening that is dragged */
    public Opening opening() {
        return opening;
    }

    /** @param place where the opening would be now */
    public void ask(OpeningPlace place) {
        if (!place.equals(asked)) {
            asked = place;
            job.ask(place);
        }
    }

    /** Ends the work; what is already on its way is ignored. */
    public void end() {
        ended = true;
        job.end();
    }

    private void lay(OpeningPlace place, Progress ending, Progress overtaken) {
        tell(place, trial.first(place.offset(), place.width(), ending));
        tell(place, trial.improved(place.offset(), place.width(), overtaken));
    }

    private void tell(OpeningPlace place, LayoutOutcome outcome) {
        display.execute(() -> {
            if (!ended) {
                tell.accept(new Tried(opening, place, outcome));
            }
        });
    }
}
