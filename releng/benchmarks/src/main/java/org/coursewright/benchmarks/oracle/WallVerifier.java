package org.coursewright.benchmarks.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Run;
import org.coursewright.bond.UnfillableRun;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;

/** Recomputes the layout of one wall. */
final class WallVerifier {

    private final WallFace wall;
    private final WallLayout layout;
    private final Handing handing;
    private final List<Stretch> stretches;
    private final List<String> faults = new ArrayList<>();

    WallVerifier(WallFace wall, WallLayout layout, Handing handing) {
        this.wall = wall;
        this.layout = layout;
        this.handing = handing;
        this.stretches = Stretches.of(wall, handing);
    }

    List<String> faults() {
        if (layout.courses().size() != wall.courses().size()) {
            return List.of("%s: %d courses laid of %d.".formatted(wall.mark(), layout.courses().size(),
                    wall.courses().size()));
        }
        verifyRuns();
        Score score = Score.of(wall, handing, layout);
        expect("cut pieces", score.cuts(), layout.cutPieces());
        expect("lap violations", score.lapViolations(), layout.lapViolations());
        expect("straight joints", Score.straightJoints(wall, handing, layout), layout.straightJoints());
        if (layout.lowerBound() > layout.cutPieces()) {
            faults.add("%s: the bound %d is above the %d cuts.".formatted(wall.mark(), layout.lowerBound(),
                    layout.cutPieces()));
        }
        if (layout.optimal()) {
            expect("lower bound of an optimal layout", layout.cutPieces(), layout.lowerBound());
        }
        return faults;
    }

    private void verifyRuns() {
        LeastCuts least = new LeastCuts(wall);
        int runs = 0;
        int unfillable = 0;
        for (Stretch stretch : stretches) {
            Optional<Run> run = laid(stretch);
            Optional<UnfillableRun> empty = reported(stretch);
            runs += run.isPresent() ? 1 : 0;
            unfillable += empty.isPresent() ? 1 : 0;
            if (run.isPresent() == empty.isPresent()) {
                faults.add("%s: %s is neither laid nor reported, or both.".formatted(wall.mark(), stretch));
            }
            run.ifPresent(laid -> faults.addAll(new RunVerifier(wall, stretch, laid).faults()));
            if (empty.isPresent() && least.fewest(stretch).isPresent()) {
                faults.add("%s: %s can be filled.".formatted(wall.mark(), stretch));
            }
        }
        expect("runs", runs, layout.courses().stream().mapToInt(course -> course.runs().size()).sum());
        expect("unfillable runs", unfillable, layout.unfillable().size());
    }

    private Optional<Run> laid(Stretch stretch) {
        CourseLayout course = layout.courses().get(stretch.course());
        return course.runs().stream()
                .filter(run -> run.from().units() == stretch.from() && run.to().units() == stretch.to())
                .findFirst();
    }

    private Optional<UnfillableRun> reported(Stretch stretch) {
        int number = wall.courses().get(stretch.course()).number();
        return layout.unfillable().stream()
                .filter(run -> run.course() == number && run.from().units() == stretch.from()
                        && run.to().units() == stretch.to() && run.startsWith() == stretch.start()
                        && run.endsWith() == stretch.end())
                .findFirst();
    }

    private void expect(String what, int counted, int stated) {
        if (counted != stated) {
            faults.add("%s: %s counted %d, stated %d.".formatted(wall.mark(), what, counted, stated));
        }
    }
}
