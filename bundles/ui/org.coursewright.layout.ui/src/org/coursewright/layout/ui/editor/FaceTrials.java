package org.coursewright.layout.ui.editor;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;

import org.coursewright.bond.Effort;
import org.coursewright.bond.WallLayout;
import org.coursewright.core.bond.LayoutOutcome;
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
    private final OpeningDrags drags;
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
     * @param tried run each time the wall is to be shown in another way
     * @param advised run each time there is something new about places
     */
    record Surroundings(Executor display, LengthStep step, Runnable tried, Runnable advised) {
    }

    FaceTrials(Wall wall, WallLaying laying, Surroundings around) {
        this.wall = wall;
        this.laying = laying;
        this.around = around;
        this.drags = new OpeningDrags(
                (opening, laid) -> new DragTrial(opening, laid, around.display(), this::tried, way), around.step());
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
            boolean same = held.map(HeldOpening::opening).equals(advised.map(HeldOpening::opening));
            advised = held;
            if (!same) {
                getReady();
            }
            cuts = Optional.empty();
            atLeisure.clear();
            lookAgain();
            around.advised().run();
        }
    }

    @Override
    public void held(Opening opening, OpeningGrip grip) {
        advise(Optional.of(new HeldOpening(opening, grip)));
    }

    /** The wall has been laid anew; what was tried is of the past. */
    void laidAnew() {
        if (!drags.isGoing()) {
            tried = Optional.empty();
            atLeisure.clear();
            getReady();
            lookAgain();
        }
    }

    private void getReady() {
        drags.getReady(advisedHere().map(HeldOpening::opening), laid());
    }

    private Optional<HeldOpening> advisedHere() {
        return advised.filter(each -> each.opening().eContainer() == wall);
    }

    /** How the building is laid, if it is laid as it is now. */
    private Optional<LayoutOutcome> laid() {
        return laying.outcome().filter(each -> !laying.isStale());
    }

    private void lookAgain() {
        advice.ifPresent(PlaceAdvice::end);
        advice = laid().flatMap(laid -> advisedHere()
                .flatMap(held -> PlaceAdvice.of(held, laid, around.display(), this::found, way)));
        advice.ifPresent(each -> each.ask(around.step().step().times(PlaceCuts.REACH), around.step().step()));
    }

    private void found(PlaceCuts found) {
        cuts = Optional.of(found.improvedBy(atLeisure));
        around.advised().run();
    }

    @Override
    public OpeningPlace attracted(Opening opening, OpeningGrip grip, OpeningPlace place) {
        Length near = around.step().step().times(PlaceCuts.ATTRACTION);
        return cuts.filter(each -> advised.filter(new HeldOpening(opening, grip)::equals).isPresent())
                .flatMap(each -> each.attracting(place, near)).orElse(place);
    }

    @Override
    public void dragged(Opening opening, OpeningGrip grip, OpeningPlace place, List<OpeningPlace> next) {
        if (!drags.isGoing()) {
            held(opening, grip);
            drags.begin(opening, laying.outcome(), !laying.isStale());
        }
        draggedTo = Optional.of(place);
        drags.ask(place, next);
        around.advised().run();
    }

    private void tried(Tried answer) {
        Optional<FaceDrawing> drawing = FaceDrawing.of(wall, answer.outcome())
                .map(found -> laying.drawing().map(FaceDrawing::corners).map(found::with).orElse(found));
        tried = Optional.of(new FaceTrial(answer.place(), drawing));
        drawing.filter(found -> found.effort() != Effort.QUICK).ifPresent(found -> {
            atLeisure.put(answer.place(), found.layout());
            cuts = cuts.map(known -> known.improvedBy(atLeisure));
        });
        around.tried().run();
    }

    /** If an edit follows, what was tried stays to be seen until the wall is laid anew. */
    @Override
    public void ended() {
        drags.over();
        draggedTo = Optional.empty();
        around.display().execute(() -> {
            if (!laying.isStale()) {
                tried = Optional.empty();
                getReady();
                around.tried().run();
            }
        });
    }

    /** Ends all work. */
    void end() {
        drags.end();
        advice.ifPresent(PlaceAdvice::end);
    }
}
