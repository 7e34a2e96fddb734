package org.coursewright.benchmarks.oracle;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;

/** Recomputes a result from its request: every run found again, every sum, joint, lap and count. */
public final class LayoutVerifier {

    private final BondRequest request;
    private final BondResult result;
    private final List<String> faults = new ArrayList<>();

    private LayoutVerifier(BondRequest request, BondResult result) {
        this.request = request;
        this.result = result;
    }

    /** @return what is wrong with the result, a sentence each; empty if it is sound */
    public static List<String> faults(BondRequest request, BondResult result) {
        LayoutVerifier verifier = new LayoutVerifier(request, result);
        verifier.verify();
        return List.copyOf(verifier.faults);
    }

    private void verify() {
        request.meetings().forEach(this::verify);
        List<String> marks = request.walls().stream().map(WallFace::mark).toList();
        List<String> laid = result.walls().stream().map(WallLayout::mark).toList();
        if (!marks.equals(laid)) {
            faults.add("Walls asked %s, laid %s.".formatted(marks, laid));
        }
        if (faults.isEmpty()) {
            Handing handing = Handing.of(request.meetings(), result.throughOnOdd());
            for (int index = 0; index < marks.size(); index++) {
                WallVerifier wall = new WallVerifier(request.walls().get(index), result.walls().get(index), handing);
                faults.addAll(wall.faults());
            }
        }
    }

    private void verify(Meeting meeting) {
        String through = result.throughOnOdd().get(meeting.id());
        if (through == null || !Handing.candidates(meeting).contains(through)) {
            faults.add("Meeting %s: %s runs through in odd courses, allowed is one of %s.".formatted(meeting.id(),
                    through, Handing.candidates(meeting)));
        }
    }
}
