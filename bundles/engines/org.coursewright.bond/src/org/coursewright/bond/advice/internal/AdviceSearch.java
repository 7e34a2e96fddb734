package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.Advice;
import org.coursewright.bond.advice.AdviceRequest;
import org.coursewright.bond.advice.DimensionProfile;
import org.coursewright.bond.advice.WallMove;
import org.coursewright.bond.internal.building.Layings;
import org.coursewright.bond.internal.refit.HandedBuilding;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;

/**
 * Searches wall by wall with the corners handed as planned, then chooses for all walls together: with the walls where they
 * are planned, and with some of them moved.
 */
final class AdviceSearch {

    /** What is chosen for every wall once some have moved. */
    private record Outcome(MovedWalls moved, JointChoice choice) {

        static final Comparator<Outcome> ORDER = Comparator.comparing((Outcome outcome) -> outcome.choice().cost())
                .thenComparing(Outcome::movement);

        private Length movement() {
            return moved.movement().plus(choice.movement());
        }
    }

    private final AdviceRequest request;
    private final Terms terms;
    private final Progress progress;
    private final HandedBuilding planned;
    private final Map<String, List<Adjustable>> adjustables = new HashMap<>();
    private final Map<Adjustable, DimensionProfile> profiles = new HashMap<>();

    AdviceSearch(AdviceRequest request, Layings layings, Progress progress) {
        this.request = request;
        this.progress = progress;
        terms = Terms.of(request);
        Set<String> marks = new HashSet<>();
        request.building().walls().forEach(wall -> marks.add(wall.mark()));
        Stream.concat(request.adjustables().stream(), request.moves().stream().map(WallMove::adjustable))
                .filter(each -> !marks.contains(each.wall())).findFirst().ifPresent(each -> {
                    throw StandardBondAdvisor.unknown(each.wall());
                });
        request.adjustables().forEach(
                each -> adjustables.computeIfAbsent(each.wall(), mark -> new ArrayList<>()).add(each));
        planned = HandedBuilding.of(request.building(), layings, progress);
    }

    Advice advise() {
        List<List<WallOption>> options = new ArrayList<>();
        for (WallFace wall : request.building().walls()) {
            WallSearch search = search(wall, terms, profiles.size());
            options.add(search.options());
            search.profiles().forEach(profile -> profiles.put(profile.adjustable(), profile));
        }
        MoveSearch moves = new MoveSearch(planned, request.moves(), terms.budget(), progress);
        List<Outcome> outcomes = Stream.concat(Stream.of(MovedWalls.NONE), moves.sets().stream())
                .map(moved -> outcome(moved, options)).toList();
        Outcome best = best(outcomes);
        HandedBuilding changed = changed(best);
        while (best.choice().isCorrected(changed.result().walls(), progress)) {
            best = best(outcomes);
            changed = changed(best);
        }
        Proposals proposals = new Proposals(planned, best.moved(), best.choice().walls(), terms.after(best.moved()),
                progress);
        return new Advice(planned.result(), proposals.list(), changed.request(), changed.result(),
                Stream.concat(request.adjustables().stream().map(profiles::get), moves.profiles().stream()).toList());
    }

    private static Outcome best(List<Outcome> outcomes) {
        return outcomes.stream().min(Outcome.ORDER).orElseThrow();
    }

    /** The changes made and the building laid afresh, its corners handed for the best, as when somebody makes the changes. */
    private HandedBuilding changed(Outcome outcome) {
        return planned.with(outcome.choice().walls().stream().map(WallOption::face).toList(), progress);
    }

    private WallSearch search(WallFace wall, Terms kept, int before) {
        progress.checkCancelled();
        List<Adjustable> own = adjustables.getOrDefault(wall.mark(), List.of());
        WallSearch search = new WallSearch(planned, own, kept);
        search.search(wall, kept.tries(before, own.size()), progress);
        return search;
    }

    /** @param options of every wall as planned; those of walls that change with the moved ones are looked for afresh */
    private Outcome outcome(MovedWalls moved, List<List<WallOption>> options) {
        Terms left = terms.after(moved);
        List<List<WallOption>> walls = new ArrayList<>();
        for (int wall = 0; wall < options.size(); wall++) {
            List<WallOption> asPlanned = options.get(wall);
            walls.add(moved.face(request.building().walls().get(wall).mark())
                    .map(face -> search(face, left, 0).options()).orElse(asPlanned));
        }
        return new Outcome(moved, new JointChoice(planned, walls, left));
    }
}
