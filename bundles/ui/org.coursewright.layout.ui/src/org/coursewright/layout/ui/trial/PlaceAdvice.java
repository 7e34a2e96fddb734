package org.coursewright.layout.ui.trial;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

import org.coursewright.bond.WallLayout;
import org.coursewright.bond.advice.Dimension;
import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.advice.ProfilePoint.Basis;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.trial.OpeningAdvice;
import org.coursewright.core.trial.OpeningTrial;
import org.coursewright.layout.ui.part.OpeningGrip;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;

/**
 * Finds in the background which cuts a wall needs by the place of one of its openings or jambs: first, in a hurry, what the
 * layout at hand comes to if it is fitted to each place; then what the advice finds at leisure; then, from the most
 * promising on, what those places need of which it knows the least only.
 */
public final class PlaceAdvice {

    private static final int MOST_LAID = 40;
    private static final long PAUSE_MILLIS = 250;
    private static final Comparator<ProfilePoint> PROMISING = Comparator.comparingInt(ProfilePoint::unfillable)
            .thenComparingInt(ProfilePoint::lapViolations).thenComparingInt(ProfilePoint::cutPieces)
            .thenComparing(point -> point.change().abs());

    private final String wall;
    private final OpeningGrip grip;
    private final OpeningPlace planned;
    private final Optional<WallLayout> asPlanned;
    private final OpeningAdvice advice;
    private final OpeningTrial trial;
    private final Executor display;
    private final Consumer<PlaceCuts> tell;
    private final NewestJob<Range> job;
    private boolean ended;

    /** Which places are looked at. */
    private record Range(Length reach, Length step) {
    }

    private PlaceAdvice(HeldOpening held, OpeningAdvice advice, LayoutOutcome laid, Executor display,
            Consumer<PlaceCuts> tell, RightOfWay way) {
        Opening opening = held.opening();
        this.wall = ((Wall) opening.eContainer()).getMark();
        this.grip = held.grip();
        this.planned = OpeningPlace.of(opening);
        this.asPlanned = layout(laid);
        this.advice = advice;
        this.trial = new OpeningTrial(opening, laid);
        this.display = display;
        this.tell = tell;
        this.job = new NewestJob<>(TrialText.adviceJob,
                (range, ending, overtaken) -> look(range, way.giving(ending), way.giving(overtaken)));
    }

    /**
     * Reads the project; to be called in the user interface thread.
     *
     * @param held of a wall
     * @param laid how the building is laid at present
     * @param display runs what is told in the user interface thread
     * @param tell told there as soon as something is found, and again each time there is more
     * @param way to be given to what goes before
     * @return what can be asked, empty if the opening has no mark or its wall is not laid
     */
    public static Optional<PlaceAdvice> of(HeldOpening held, LayoutOutcome laid, Executor display,
            Consumer<PlaceCuts> tell, RightOfWay way) {
        return OpeningAdvice.of(held.opening(), laid)
                .map(advice -> new PlaceAdvice(held, advice, laid, display, tell, way));
    }

    /**
     * Begins to look, soon.
     *
     * @param reach how far from the planned place either way
     * @param step between places
     */
    public void ask(Length reach, Length step) {
        job.askAfter(new Range(reach, step), PAUSE_MILLIS);
    }

    /** Ends the work; what is already on its way is ignored. */
    public void end() {
        ended = true;
        job.end();
    }

    private void look(Range range, Progress ending, Progress overtaken) {
        SortedMap<Length, ProfilePoint> points = new TreeMap<>();
        asPlanned.ifPresent(layout -> points.put(Length.ZERO, PlaceCuts.laid(Length.ZERO, layout)));
        tell(points, true);
        advice.soon(dimension(), range.reach(), range.step(), ending).points()
                .forEach(point -> points.merge(point.change(), point, PlaceAdvice::better));
        tell(points, true);
        advice.profile(dimension(), range.reach(), range.step(), ending).points()
                .forEach(point -> points.merge(point.change(), point, PlaceAdvice::better));
        tell(points, true);
        points.values().stream().filter(point -> point.basis() == Basis.BOUND).sorted(PROMISING).limit(MOST_LAID)
                .toList().forEach(point -> lay(point.change(), points, overtaken));
        tell(points, false);
    }

    private Dimension dimension() {
        return switch (grip) {
            case OPENING -> Dimension.OFFSET;
            case NEAR_JAMB -> Dimension.NEAR_JAMB;
            case FAR_JAMB -> Dimension.WIDTH;
        };
    }

    /** What was fitted in a hurry may be worse than what is found at leisure; how the wall is laid as planned is known. */
    private static ProfilePoint better(ProfilePoint known, ProfilePoint advised) {
        boolean worse = known.basis() != Basis.BOUND
                && (advised.basis() == Basis.BOUND || PROMISING.compare(known, advised) <= 0);
        return worse || advised.change().signum() == 0 ? known : advised;
    }

    private void lay(Length change, SortedMap<Length, ProfilePoint> points, Progress overtaken) {
        OpeningPlace place = grip.moved(planned, change);
        LayoutOutcome outcome = trial.first(place.offset(), place.width(), overtaken);
        layout(outcome).ifPresent(layout -> points.put(change, PlaceCuts.laid(change, layout)));
        tell(points, true);
    }

    private Optional<WallLayout> layout(LayoutOutcome outcome) {
        return outcome.result().walls().stream().filter(layout -> layout.mark().equals(wall)).findFirst();
    }

    private void tell(SortedMap<Length, ProfilePoint> points, boolean goesOn) {
        PlaceCuts found = new PlaceCuts(grip, planned, List.copyOf(points.values()), goesOn);
        display.execute(() -> {
            if (!ended) {
                tell.accept(found);
            }
        });
    }
}
