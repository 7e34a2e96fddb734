package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.coursewright.bond.InvalidBondRequestException;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.Advice;
import org.coursewright.bond.advice.AdviceRequest;
import org.coursewright.bond.advice.BondAdvisor;
import org.coursewright.bond.advice.DimensionProfile;
import org.coursewright.bond.advice.ProfileRequest;
import org.coursewright.bond.internal.FaceRuns;
import org.coursewright.bond.internal.HandedBuilding;
import org.coursewright.bond.internal.RefitWall;
import org.coursewright.measure.Progress;

/** Searches wall by wall with the corners handed as planned, then chooses for all walls together. */
public final class StandardBondAdvisor implements BondAdvisor {

    @Override
    public Advice advise(AdviceRequest request, Progress progress) {
        Map<String, List<Adjustable>> adjustables = byWall(request);
        HandedBuilding planned = HandedBuilding.of(request.building(), progress);
        List<List<WallOption>> options = new ArrayList<>();
        Terms terms = Terms.of(request);
        Map<Adjustable, DimensionProfile> profiles = new HashMap<>();
        for (WallFace wall : request.building().walls()) {
            progress.checkCancelled();
            List<Adjustable> own = adjustables.getOrDefault(wall.mark(), List.of());
            WallSearch search = new WallSearch(planned, own, terms);
            search.search(wall, terms.tries(profiles.size(), own.size()), progress);
            options.add(search.options());
            search.profiles().forEach(profile -> profiles.put(profile.adjustable(), profile));
        }
        List<WallOption> chosen = new JointChoice(planned, options, terms).choose(progress);
        Promise promise = new Promise(planned, chosen, terms, progress);
        return new Advice(planned.result(), promise.proposals(), promise.changed().request(),
                promise.changed().result(), request.adjustables().stream().map(profiles::get).toList());
    }

    @Override
    public DimensionProfile profile(ProfileRequest request, Progress progress) {
        String mark = request.adjustable().wall();
        WallFace wall = request.building().walls().stream().filter(each -> each.mark().equals(mark)).findFirst()
                .orElseThrow(() -> unknown(mark));
        FaceRuns runs = FaceRuns.of(wall, request.building(), request.laid().throughOnOdd());
        Profile profile = new Profile(wall, runs, request.adjustable(), Terms.of(request));
        request.laid().walls().stream().filter(each -> each.mark().equals(mark)).findFirst()
                .ifPresent(layout -> RefitWall.matching(runs, layout)
                        .ifPresent(planned -> profile.fitPlanned(layout, planned, progress)));
        return profile.shown();
    }

    private static InvalidBondRequestException unknown(String wall) {
        return new InvalidBondRequestException("The request has no wall %s that could change.".formatted(wall));
    }

    private static Map<String, List<Adjustable>> byWall(AdviceRequest request) {
        Set<String> marks = new HashSet<>();
        request.building().walls().forEach(wall -> marks.add(wall.mark()));
        Map<String, List<Adjustable>> byWall = new HashMap<>();
        for (Adjustable adjustable : request.adjustables()) {
            if (!marks.contains(adjustable.wall())) {
                throw unknown(adjustable.wall());
            }
            byWall.computeIfAbsent(adjustable.wall(), mark -> new ArrayList<>()).add(adjustable);
        }
        return byWall;
    }
}
