package org.coursewright.layout.ui.trial;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

import org.coursewright.bond.Effort;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.trial.OpeningTrial;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Opening;

/**
 * Lays a wall in the background for the newest place that an opening is dragged to: first soon, then, while the mouse rests,
 * as well as it can be. While nothing newer is asked for it lays the wall for places where the mouse may be next, so that
 * they are answered at once.
 */
public final class DragTrial {

    /** How long the mouse rests before more than a first answer is looked for. */
    private static final long REST_MILLIS = 120;

    private final Opening opening;
    private final OpeningTrial trial;
    private final Executor display;
    private final Consumer<Tried> tell;
    private final RightOfWay way;
    private final NewestJob<Work> soon;
    private final NewestJob<OpeningPlace> well;
    private final FirstAnswers answers = new FirstAnswers();
    private volatile OpeningPlace asked;
    private int wishes;
    private int answered;
    private boolean ended;

    /** Where the opening is now; later wishes have greater numbers. */
    private record Wish(int number, OpeningPlace place) {
    }

    /** What is done in the background. */
    @FunctionalInterface
    private interface Work {

        /** See {@link NewestJob.Work}. */
        void with(Progress ending, Progress overtaken);
    }

    /**
     * Reads the project; to be made in the user interface thread.
     *
     * @param opening that is dragged
     * @param laid how the building is laid at present
     * @param display runs what is told in the user interface thread
     * @param tell told there each time there is an answer, until the trial ends
     * @param way taken until the mouse rests
     */
    public DragTrial(Opening opening, LayoutOutcome laid, Executor display, Consumer<Tried> tell, RightOfWay way) {
        this.opening = opening;
        this.trial = new OpeningTrial(opening, laid);
        this.display = display;
        this.tell = tell;
        this.way = way;
        this.soon = new NewestJob<>(TrialText.dragJob, Work::with);
        this.well = new NewestJob<>(TrialText.dragJob, (place, ending, overtaken) -> layWell(place, overtaken));
        this.asked = OpeningPlace.of(opening);
    }

    /** @return the opening that is dragged */
    public Opening opening() {
        return opening;
    }

    /**
     * Lays the wall for places that may be asked for, until one is.
     *
     * @param next where the opening may be, likeliest first
     */
    public void lookAhead(List<OpeningPlace> next) {
        soon.ask((ending, overtaken) -> lookAhead(next, ending, overtaken));
    }

    /**
     * Tells at once how the wall is laid if that is known already.
     *
     * @param place where the opening would be now
     * @param next where it may be next, likeliest first
     */
    public void ask(OpeningPlace place, List<OpeningPlace> next) {
        if (!place.equals(asked)) {
            asked = place;
            Wish wish = new Wish(++wishes, place);
            Optional<LayoutOutcome> known = answers.of(place);
            well.drop();
            way.take();
            soon.ask((ending, overtaken) -> {
                laySoon(wish, ending);
                lookAhead(next, ending, overtaken);
            });
            known.ifPresent(answer -> answer(wish, answer));
        }
    }

    /** Ends the work; what is already on its way is ignored. */
    public void end() {
        ended = true;
        way.leave();
        soon.end();
        well.end();
    }

    private void laySoon(Wish wish, Progress ending) {
        LayoutOutcome answer = first(wish.place(), ending);
        display.execute(() -> answer(wish, answer));
    }

    private void lookAhead(List<OpeningPlace> next, Progress ending, Progress overtaken) {
        for (OpeningPlace each : next) {
            overtaken.checkCancelled();
            first(each, Progress.until(() -> overtaken.isCancelled() && (ending.isCancelled() || !each.equals(asked))));
        }
    }

    private LayoutOutcome first(OpeningPlace place, Progress progress) {
        LayoutOutcome answer = answers.of(place)
                .orElseGet(() -> trial.first(place.offset(), place.width(), progress));
        answers.keep(place, answer);
        return answer;
    }

    /** Answers that come late are shown as long as there is none to a later wish. */
    private void answer(Wish wish, LayoutOutcome answer) {
        if (!ended && wish.number() > answered) {
            answered = wish.number();
            tell.accept(new Tried(opening, wish.place(), answer));
            if (answered == wishes) {
                well.askAfter(wish.place(), REST_MILLIS);
            }
        }
    }

    private void layWell(OpeningPlace place, Progress overtaken) {
        way.leave();
        if (answers.of(place).filter(known -> known.result().effort() != Effort.QUICK).isEmpty()) {
            LayoutOutcome improved = trial.improved(place.offset(), place.width(), overtaken);
            answers.keep(place, improved);
            display.execute(() -> improve(place, improved));
        }
    }

    private void improve(OpeningPlace place, LayoutOutcome improved) {
        if (!ended && place.equals(asked)) {
            tell.accept(new Tried(opening, place, improved));
        }
    }
}
