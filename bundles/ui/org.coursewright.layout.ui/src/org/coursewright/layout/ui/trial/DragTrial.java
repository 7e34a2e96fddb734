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

    /** How long the mouse rests before more than a first answer is looked for. */
    private static final long REST_MILLIS = 120;

    private final Opening opening;
    private final OpeningTrial trial;
    private final Executor display;
    private final Consumer<Tried> tell;
    private final RightOfWay way;
    private final NewestJob<OpeningPlace> soon;
    private final NewestJob<OpeningPlace> well;
    private OpeningPlace asked;
    private boolean ended;

    /**
     * Reads the project; to be made in the user interface thread.
     *
     * @param opening that is dragged
     * @param laid how the building is laid at present
     * @param display runs what is told in the user interface thread
     * @param tell told there each time there is an answer, until the trial ends
     * @param way taken while a first answer is looked for
     */
    public DragTrial(Opening opening, LayoutOutcome laid, Executor display, Consumer<Tried> tell, RightOfWay way) {
        this.opening = opening;
        this.trial = new OpeningTrial(opening, laid);
        this.display = display;
        this.tell = tell;
        this.way = way;
        this.soon = new NewestJob<>(TrialText.dragJob, (place, ending, overtaken) -> laySoon(place, ending));
        this.well = new NewestJob<>(TrialText.dragJob, (place, ending, overtaken) -> layWell(place, overtaken));
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
            well.drop();
            way.take();
            soon.ask(place);
        }
    }

    /** Ends the work; what is already on its way is ignored. */
    public void end() {
        ended = true;
        way.leave();
        soon.end();
        well.end();
    }

    private void laySoon(OpeningPlace place, Progress ending) {
        LayoutOutcome first = trial.first(place.offset(), place.width(), ending);
        display.execute(() -> {
            tell(place, first);
            if (!ended && place.equals(asked)) {
                way.leave();
                well.askAfter(place, REST_MILLIS);
            }
        });
    }

    private void layWell(OpeningPlace place, Progress overtaken) {
        LayoutOutcome improved = trial.improved(place.offset(), place.width(), overtaken);
        display.execute(() -> tell(place, improved));
    }

    private void tell(OpeningPlace place, LayoutOutcome outcome) {
        if (!ended) {
            tell.accept(new Tried(opening, place, outcome));
        }
    }
}
