package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.DimensionProfile;
import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.advice.ProfilePoint.Basis;
import org.coursewright.bond.advice.WallMove;
import org.coursewright.bond.internal.building.LayingCost;
import org.coursewright.bond.internal.refit.FaceRuns;
import org.coursewright.bond.internal.refit.HandedBuilding;
import org.coursewright.bond.internal.refit.RefitWall;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;

/**
 * What the walls that change with a moved wall come to together for every place of it: bounded by what their runs cost alone,
 * and fitted from how they are laid as planned.
 */
final class MoveProfile {

    /** A place of the wall, none where it is planned, and what the walls come to then. */
    private record Stand(Optional<WallMove.Place> place, LayingCost bound, LayingCost cost, Basis basis) {

        Length change() {
            return place.map(WallMove.Place::change).orElse(Length.ZERO);
        }

        ProfilePoint shown() {
            return new ProfilePoint(change(), Math.toIntExact(cost.unfillable()), Math.toIntExact(cost.violations()),
                    Math.toIntExact(cost.cuts()), Math.toIntExact(bound.cuts()), basis);
        }
    }

    private static final Comparator<Stand> ORDER = Comparator.comparing(Stand::cost)
            .thenComparing(stand -> stand.change().abs()).thenComparing(Stand::change);

    private final WallMove move;
    private final Map<String, RefitWall> planned;
    private final Set<String> walls = new TreeSet<>();
    private final List<Stand> stands = new ArrayList<>();
    private final LayingCost cost;

    /** @param planned how every wall of the building is laid as planned, by its mark */
    MoveProfile(WallMove move, Map<String, RefitWall> planned, Progress progress) {
        this.move = move;
        this.planned = planned;
        move.places().forEach(place -> place.faces().forEach(face -> walls.add(face.mark())));
        Stand asPlanned = stand(Optional.empty(), progress);
        cost = asPlanned.cost();
        stands.add(asPlanned);
        for (WallMove.Place place : move.places()) {
            progress.checkCancelled();
            stands.add(stand(Optional.of(place), progress));
        }
        stands.sort(Comparator.comparing(Stand::change));
    }

    /**
     * Lays the walls in a hurry for the places with the least bounds, as far as these are below what is known of any place.
     *
     * @param tries for how many places at most
     */
    void tryOut(HandedBuilding building, int tries, Progress progress) {
        Set<Stand> tried = new HashSet<>();
        for (int count = 0; count < tries; count++) {
            LayingCost best = known().map(Stand::cost).min(Comparator.naturalOrder()).orElse(cost);
            Optional<Stand> next = stands.stream().filter(stand -> stand.place().isPresent() && !tried.contains(stand))
                    .filter(stand -> stand.bound().compareTo(best) < 0)
                    .min(Comparator.comparing(Stand::bound).thenComparing(stand -> stand.change().abs()));
            if (next.isEmpty()) {
                return;
            }
            Stand laid = laid(next.get(), building, progress);
            tried.add(laid);
            stands.set(stands.indexOf(next.get()), laid);
        }
    }

    private Stand laid(Stand stand, HandedBuilding building, Progress progress) {
        LayingCost sum = LayingCost.NONE;
        for (String mark : walls) {
            sum = sum.plus(stand.place().flatMap(there -> face(there, mark))
                    .map(face -> LayingCost.of(building.laySoon(face, progress))).orElse(planned.get(mark).cost()));
        }
        boolean better = stand.basis() == Basis.BOUND || sum.compareTo(stand.cost()) < 0;
        return better ? new Stand(stand.place(), stand.bound(), sum, Basis.FITTED) : stand;
    }

    private Stand stand(Optional<WallMove.Place> place, Progress progress) {
        LayingCost bound = LayingCost.NONE;
        LayingCost fitted = LayingCost.NONE;
        boolean known = true;
        for (String mark : walls) {
            RefitWall wall = planned.get(mark);
            FaceRuns runs = place.flatMap(there -> face(there, mark)).map(wall.runs()::changed).orElse(wall.runs());
            Optional<RefitWall> found = runs == wall.runs() ? Optional.of(wall) : wall.fit(runs, progress);
            bound = bound.plus(runs.bound());
            fitted = fitted.plus(found.map(RefitWall::cost).orElse(LayingCost.NONE));
            known &= found.isPresent();
        }
        Basis basis = place.isPresent() ? Basis.FITTED : Basis.LAID;
        return new Stand(place, bound, known ? fitted : bound, known ? basis : Basis.BOUND);
    }

    private static Optional<WallFace> face(WallMove.Place place, String mark) {
        return place.faces().stream().filter(face -> face.mark().equals(mark)).findFirst();
    }

    /** Marks of the walls that change. */
    Set<String> walls() {
        return walls;
    }

    /** The best place that spares something, no further away than that. */
    Optional<MovedWalls.Move> best(Length reach) {
        return sparing(reach).flatMap(Stand::place).map(place -> new MovedWalls.Move(move, place));
    }

    /** What the best place comes to, less what the walls come to as planned. */
    LayingCost spared(Length reach) {
        LayingCost best = sparing(reach).map(Stand::cost).orElse(cost);
        return new LayingCost(best.unfillable() - cost.unfillable(), best.violations() - cost.violations(),
                best.cuts() - cost.cuts());
    }

    private Optional<Stand> sparing(Length reach) {
        return known().filter(stand -> !stand.change().abs().isGreaterThan(reach))
                .filter(stand -> stand.cost().compareTo(cost) < 0).min(ORDER);
    }

    private Stream<Stand> known() {
        return stands.stream().filter(stand -> stand.basis() != Basis.BOUND);
    }

    DimensionProfile shown() {
        return new DimensionProfile(move.adjustable(), move.planned(), stands.stream().map(Stand::shown).toList(),
                known().min(ORDER).map(Stand::change).orElse(Length.ZERO));
    }
}
