package org.coursewright.layout.ui.plan.shape;

import java.util.List;

import org.coursewright.core.geometry.Place;
import org.coursewright.core.geometry.WallMeeting.Kind;

/** Cuts the ends of walls where they meet, as {@link org.coursewright.core.geometry.WallNetwork} counts their lengths. */
final class MeetingCuts {

    private final PlanPoint at;
    private final List<End> ends;

    /** A wall and where on it the meeting is. */
    record End(WallDraft wall, Place place) {

        PlanArm arm(PlanPoint at) {
            return place == Place.ALONG ? wall.armAt(at) : wall.arm(place);
        }
    }

    MeetingCuts(PlanPoint at, List<End> ends) {
        this.at = at;
        this.ends = ends;
    }

    void apply(Kind kind) {
        switch (kind) {
            case FREE -> {
                /* an end in the open is cut square to begin with */ }
            case INLINE -> ends.forEach(end -> end.wall().cut(end.place(), end.arm(at).square(true)));
            case CORNER -> corner();
            case TEE, CROSS -> bar();
        }
    }

    private void corner() {
        End first = ends.get(0);
        End second = ends.get(1);
        first.wall().cut(first.place(), first.arm(at).corner(second.arm(at)));
        second.wall().cut(second.place(), second.arm(at).corner(first.arm(at)));
        ends.stream().skip(2).forEach(stem -> stem(stem, List.of(first)));
    }

    private void bar() {
        List<End> bar = ends.stream().filter(end -> end.place() == Place.ALONG).limit(1).toList();
        if (bar.isEmpty()) {
            splitBar(ends.subList(ends.size() - 2, ends.size()));
        } else {
            ends.stream().filter(end -> end.place() != Place.ALONG).forEach(stem -> stem(stem, bar));
        }
    }

    private void splitBar(List<End> bar) {
        if (!bar.get(0).arm(at).out().isParallel(bar.get(1).arm(at).out())) {
            corner();
            return;
        }
        bar.forEach(end -> end.wall().cut(end.place(), end.arm(at).square(false)));
        ends.stream().limit(ends.size() - 2L).forEach(stem -> stem(stem, bar));
    }

    private void stem(End stem, List<End> bar) {
        PlanArm arm = stem.arm(at);
        EndCut cut = arm.against(bar.stream().map(end -> end.arm(at)).toList());
        stem.wall().cut(stem.place(), cut);
        for (End each : bar) {
            boolean leftOfArm = each.arm(at).isOnLeft(arm.out());
            each.wall().interrupt(leftOfArm != (each.place() == Place.END), new PlanEdge(cut.left(), cut.right()));
        }
    }
}
