package org.coursewright.bond.advice.internal;

import java.util.function.Supplier;

import org.coursewright.bond.BondSolver;
import org.coursewright.bond.InvalidBondRequestException;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.Advice;
import org.coursewright.bond.advice.AdviceRequest;
import org.coursewright.bond.advice.BondAdvisor;
import org.coursewright.bond.advice.DimensionProfile;
import org.coursewright.bond.advice.ProfileRequest;
import org.coursewright.bond.internal.building.Layings;
import org.coursewright.bond.internal.building.RememberingBondSolver;
import org.coursewright.bond.internal.refit.FaceRuns;
import org.coursewright.bond.internal.refit.RefitWall;
import org.coursewright.measure.Progress;

/** The advisor of this engine. */
public final class StandardBondAdvisor implements BondAdvisor {

    private final Supplier<Layings> layings;

    /** One that lays every building afresh. */
    public StandardBondAdvisor() {
        layings = Layings::new;
    }

    /** @param solver whose walls are not laid again if it remembers them */
    public StandardBondAdvisor(BondSolver solver) {
        layings = solver instanceof RememberingBondSolver remembering ? remembering::remembered : Layings::new;
    }

    @Override
    public Advice advise(AdviceRequest request, Progress progress) {
        return new AdviceSearch(request, layings.get(), progress).advise();
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

    static InvalidBondRequestException unknown(String wall) {
        return new InvalidBondRequestException("The request has no wall %s that could change.".formatted(wall));
    }
}
