package org.coursewright.layout.ui.editor;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;

import org.coursewright.bond.Effort;
import org.coursewright.bond.WallLayout;
import org.coursewright.diagram.ui.scale.LengthStep;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.part.FaceDragging;
import org.coursewright.layout.ui.part.FaceTrial;
import org.coursewright.layout.ui.part.OpeningGrip;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.layout.ui.trial.DragTrial;
import org.coursewright.layout.ui.trial.HeldOpening;
import org.coursewright.layout.ui.trial.PlaceAdvice;
import org.coursewright.layout.ui.trial.PlaceCuts;
import org.coursewright.layout.ui.trial.RightOfWay;
import org.coursewright.layout.ui.trial.Tried;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;

/** What is tried out while an opening is dragged, and what places of the selected opening would need. */
final class FaceTrials implements FaceDragging {

    private final Wall wall;
    private final WallLaying laying;
    private final Surroundings around;
    private final RightOfWay way = new RightOfWay();
    private Optional<DragTrial> drag = Optional.empty();
    private Optional<OpeningPlace> draggedTo = Optional.empty();
    private Optional<FaceTrial> tried = Optional.empty();
    private Optional<HeldOpening> advised = Optional.empty();
    private Optional<PlaceAdvice> advice = Optional.empty();
    private Optional<PlaceCuts> cuts = Optional.empty();
    /** How the wall was laid where the opening rested during drags; first answers may be worse. */
    private final Map<OpeningPlace, WallLayout> atLeisure = new HashMap<>();

    /**
     * What the trials need of the editor.
     *
     * @param display runs what is told in the user interface thread
     * @param step between places
     * @param changed run each time there is something new to be shown
     * @param moved run each time an opening is dragged further
     */
    record Surroundings(Executor display, LengthStep step, Runnable changed, Runnable moved) {
    }

    FaceTrials(Wall wall, WallLaying laying, Surroundings around) {
        this.wall = wall;
        this.laying = laying;
        this.around = around;
    }

    /** How the wall would be laid, while an opening is dragged and until the wall is laid so. */
    Optional<FaceTrial> tried() {
        return tried;
    }

    /** The opening whose places, or whose jamb's places, are looked at. */
    Optional<HeldOpening> advised() {
        return advised;
    }

    /** Where that opening is, or is dragged to. */
    Optional<OpeningPlace> place() {
        return draggedTo.or(() -> tried.map(FaceTrial::place))
                .or(() -> advised.map(HeldOpening::opening).map(OpeningPlace::of));
    }

    /** What the places need, as far as it is known. */
    Optional<PlaceCuts> cuts() {
        return cuts;
    }

    /** Another opening is selected, or none: looks at its places, whatever of it is held. */
    void selected(Optional<Opening> opening) {
        if (!opening.equals(advised.map(HeldOpening::opening))) {
            advise(opening.map(each -> new HeldOpening(each, OpeningGrip.OPENING)));
        }
    }

    private void advise(Optional<HeldOpening> held) {
        if (!held.equals(advised)) {
            advised = held;
            cuts = Optional.empty();
            atLeisure.clear();
            lookAgain();
            around.changed().run();
        }
    }

    @Override
    public void held(Opening opening, OpeningGrip grip) {
        advise(Optional.of(new HeldOpening(opening, grip)));
    }

    /** The wall has been laid anew; what was tried is of the past. */
    void laid() {
        if (drag.isEmpty()) {
            tried = Optional.empty();
            atLeisure.clear();
            lookAgain();
        }
    }

    private void lookAgain() {
        advice.ifPresent(PlaceAdvice::end);
        advice = laying.isStale()
                ? Optional.empty()
                : advised.filter(each -> each.opening().eContainer() == wall).flatMap(held -> laying.outcome().flatMap(
                        laid -> PlaceAdvice.of(held, laid, around.display(), this::found, way)));
        advice.ifPresent(each -> each.ask(around.step().step().times(PlaceCuts.REACH), around.step().step()));
    }

    private void found(PlaceCuts found) {
        cuts = Optional.of(found.improvedBy(atLeisure));
        around.changed().run();
    }

    @Override
    public OpeningPlace attracted(Opening opening, OpeningGrip grip, OpeningPlace place) {
        Length near = around.step().step().times(PlaceCuts.ATTRACTION);
        return cuts.filter(each -> advised.filter(new HeldOpening(opening, grip)::equals).isPresent())
                .flatMap(each -> each.attracting(place, near)).orElse(place);
    }

    @Override
    public void dragged(Opening opening, OpeningGrip grip, OpeningPlace place) {
        if (drag.isEmpty()) {
            held(opening, grip);
            drag = laying.outcome().map(laid -> new DragTrial(opening, laid, around.display(), this::tried, way));
        }
        draggedTo = Optional.of(place);
        drag.ifPresent(each -> each.ask(place));
        around.moved().run();
    }

    private void tried(Tried answer) {
        Optional<FaceDrawing> drawing = FaceDrawing.of(wall, answer.outcome())
                .map(found -> laying.drawing().map(FaceDrawing::corners).map(found::with).orElse(found));
        tried = Optional.of(new FaceTrial(answer.place(), drawing));
        drawing.filter(found -> found.effort() != Effort.QUICK).ifPresent(found -> {
            atLeisure.put(answer.place(), found.layout());
            cuts = cuts.map(known -> known.improvedBy(atLeisure));
        });
        around.changed().run();
    }

    /** If an edit follows, what was tried stays to be seen until the wall is laid anew. */
    @Override
    public void ended() {
        drag.ifPresent(DragTrial::end);
        drag = Optional.empty();
        draggedTo = Optional.empty();
        around.display().execute(() -> {
            if (!laying.isStale()) {
                tried = Optional.empty();
                around.changed().run();
            }
        });
    }

    /** Ends all work. */
    void end() {
        drag.ifPresent(DragTrial::end);
        advice.ifPresent(PlaceAdvice::end);
    }
}
