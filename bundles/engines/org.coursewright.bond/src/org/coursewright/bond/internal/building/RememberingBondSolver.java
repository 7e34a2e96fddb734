package org.coursewright.bond.internal.building;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.bond.Effort;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.handing.AlternatingHanding;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.measure.Progress;

/** Lays a building that is being changed. */
public final class RememberingBondSolver implements BondSolver {

    private final Layings layings = new Layings();
    private Map<String, String> lastHanding = Map.of();

    @Override
    public synchronized BondResult solve(BondRequest request, Progress progress) {
        RequestCheck.check(request);
        layings.forgetOld();
        Handed handed = new HandingSearch(request, layings).search(progress);
        lastHanding = handed.handing().onOdd();
        progress.done(1);
        return handed.result();
    }

    @Override
    public synchronized BondResult first(BondRequest request, Progress progress) {
        RequestCheck.check(request);
        Handing handing = new Handing(request.meetings(), AlternatingHanding.of(asBefore(request)));
        List<WallLayout> walls = new ArrayList<>();
        for (WallFace wall : request.walls()) {
            progress.checkCancelled();
            walls.add(layings.laySoon(wall, handing, progress));
            progress.done((double) walls.size() / request.walls().size());
        }
        progress.done(1);
        return new BondResult(walls, handing.onOdd(), false, 0, Effort.QUICK);
    }

    /** @return layings that take over what this solver remembers at present; does not wait for it */
    public Layings remembered() {
        return layings.lent();
    }

    /** The request with every meeting that was handed before pinned so, unless somebody has pinned it otherwise. */
    private BondRequest asBefore(BondRequest request) {
        return new BondRequest(request.walls(), request.meetings().stream().map(this::asBefore).toList());
    }

    private Meeting asBefore(Meeting meeting) {
        String before = lastHanding.get(meeting.id());
        boolean pinned = meeting.throughOnOdd().isPresent();
        return pinned || before == null || !Handing.rivals(meeting).contains(before)
                ? meeting
                : new Meeting(meeting.id(), meeting.kind(), meeting.walls(), Optional.of(before));
    }
}
