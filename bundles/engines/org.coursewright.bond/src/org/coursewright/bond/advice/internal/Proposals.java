package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.advice.Change;
import org.coursewright.bond.advice.Proposal;
import org.coursewright.bond.advice.WallMove;
import org.coursewright.bond.internal.refit.HandedBuilding;
import org.coursewright.measure.Progress;

/** What each of the chosen changes does in its wall, told with the corners handed as planned. */
final class Proposals {

    private final HandedBuilding planned;
    private final Terms terms;
    private final Progress progress;
    private final List<Proposal> proposals = new ArrayList<>();

    /** @param moved walls that have moved before the other changes are made */
    Proposals(HandedBuilding planned, MovedWalls moved, List<WallOption> chosen, Terms terms, Progress progress) {
        this.planned = planned;
        this.terms = terms;
        this.progress = progress;
        moved.moves().forEach(this::propose);
        for (int index = 0; index < chosen.size(); index++) {
            WallFace wall = planned.request().walls().get(index);
            WallLayout layout = planned.result().walls().get(index);
            Optional<WallFace> face = moved.face(wall.mark());
            propose(face.orElse(wall), face.map(each -> planned.lay(each, progress)).orElse(layout),
                    chosen.get(index));
        }
    }

    /** Lays the walls that a moved wall changes. */
    private void propose(MovedWalls.Move move) {
        WallMove wall = move.wall();
        List<WallLayout> before = new ArrayList<>();
        List<WallLayout> after = new ArrayList<>();
        for (WallFace face : move.place().faces()) {
            before.addAll(planned.result().walls().stream().filter(each -> each.mark().equals(face.mark())).toList());
            after.add(planned.lay(face, progress));
        }
        proposals.add(new Proposal(wall.adjustable(), wall.planned(), wall.planned().plus(move.place().change()),
                before, after));
    }

    /**
     * Tells how the wall is laid after each of its changes: after the last as in the changed building, if its corners are
     * handed there as planned, else without the finer bound; after those before in a hurry.
     */
    private void propose(WallFace wall, WallLayout layout, WallOption option) {
        WallFace face = wall;
        WallLayout before = layout;
        for (Change change : option.changes()) {
            progress.checkCancelled();
            FaceChange faceChange = terms.change(face, change.adjustable());
            face = faceChange.by(change.by()).orElseThrow();
            WallLayout after = face.equals(option.face())
                    ? planned.layAsKnown(face, progress)
                    : planned.laySoon(face, progress);
            proposals.add(new Proposal(change.adjustable(), faceChange.planned(),
                    faceChange.planned().plus(change.by()), List.of(before), List.of(after)));
            before = after;
        }
    }

    List<Proposal> list() {
        return proposals;
    }
}
