package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.advice.Change;
import org.coursewright.bond.advice.Proposal;
import org.coursewright.bond.internal.HandedBuilding;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;

/**
 * Makes the chosen changes one after the other and lays the building after each, its corners handed afresh, as they will
 * be when somebody makes the changes: so every proposal promises what will come true.
 */
final class Promise {

    private final List<Proposal> proposals = new ArrayList<>();
    private final Terms terms;
    private HandedBuilding building;

    Promise(HandedBuilding planned, List<WallOption> chosen, Terms terms, Progress progress) {
        this.terms = terms;
        building = planned;
        for (int index = 0; index < chosen.size(); index++) {
            for (Change change : chosen.get(index).changes()) {
                progress.checkCancelled();
                make(index, change, progress);
            }
        }
    }

    private void make(int index, Change change, Progress progress) {
        List<WallFace> walls = new ArrayList<>(building.request().walls());
        FaceChange faceChange = terms.change(walls.get(index), change.adjustable());
        Length from = faceChange.planned();
        walls.set(index, faceChange.by(change.by()).orElseThrow());
        WallLayout before = building.result().walls().get(index);
        building = building.with(walls, progress);
        proposals.add(new Proposal(change.adjustable(), from, from.plus(change.by()), before,
                building.result().walls().get(index)));
    }

    List<Proposal> proposals() {
        return proposals;
    }

    /** The building with all changes made. */
    HandedBuilding changed() {
        return building;
    }
}
