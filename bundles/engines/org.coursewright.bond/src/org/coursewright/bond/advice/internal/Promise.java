package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.advice.Change;
import org.coursewright.bond.advice.Proposal;
import org.coursewright.bond.internal.HandedBuilding;
import org.coursewright.measure.Progress;

/**
 * Makes the chosen changes and lays the building afresh, its corners handed for the best, as they will be when somebody
 * makes the changes. If that leaves the corners handed as planned, every change does in its wall what it did when it was
 * found. Otherwise changes are made one after the other, with the building laid after each, so that every proposal
 * promises what will come true.
 */
final class Promise {

    private final Terms terms;
    private final List<WallOption> chosen;
    private final Progress progress;
    private final List<Proposal> proposals = new ArrayList<>();
    private HandedBuilding building;

    Promise(HandedBuilding planned, List<WallOption> chosen, Terms terms, Progress progress) {
        this.terms = terms;
        this.chosen = chosen;
        this.progress = progress;
        HandedBuilding changed = planned.with(chosen.stream().map(WallOption::face).toList(), progress);
        building = planned;
        boolean handedAlike = changed.result().throughOnOdd().equals(planned.result().throughOnOdd());
        for (int index = 0; index < chosen.size(); index++) {
            if (handedAlike) {
                propose(index, planned);
            } else {
                make(index);
            }
        }
        building = handedAlike ? changed : building;
    }

    /** Lays only the wall after each of its changes. */
    private void propose(int index, HandedBuilding planned) {
        WallFace face = planned.request().walls().get(index);
        WallLayout before = planned.result().walls().get(index);
        for (Change change : chosen.get(index).changes()) {
            FaceChange faceChange = terms.change(face, change.adjustable());
            face = faceChange.by(change.by()).orElseThrow();
            WallLayout after = planned.lay(face, progress);
            propose(change, faceChange, before, after);
            before = after;
        }
    }

    /** Lays the whole building after each change of a wall. */
    private void make(int index) {
        for (Change change : chosen.get(index).changes()) {
            progress.checkCancelled();
            List<WallFace> walls = new ArrayList<>(building.request().walls());
            FaceChange faceChange = terms.change(walls.get(index), change.adjustable());
            walls.set(index, faceChange.by(change.by()).orElseThrow());
            WallLayout before = building.result().walls().get(index);
            building = building.with(walls, progress);
            propose(change, faceChange, before, building.result().walls().get(index));
        }
    }

    private void propose(Change change, FaceChange made, WallLayout before, WallLayout after) {
        proposals.add(new Proposal(change.adjustable(), made.planned(), made.planned().plus(change.by()), before,
                after));
    }

    List<Proposal> proposals() {
        return proposals;
    }

    /** The building with all changes made. */
    HandedBuilding changed() {
        return building;
    }
}
