package org.coursewright.bond.internal.reason;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.CutCause;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.choice.WorkLimit;
import org.coursewright.bond.internal.filling.FillTable;
import org.coursewright.bond.internal.filling.RunFiller;
import org.coursewright.bond.internal.filling.Shortfalls;
import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.run.RunSpan;

/**
 * Finds out which neighbouring courses, as they are laid, ask for the cuts of a run: no filling with fewer cuts laps with
 * them as well. Every filling is looked at, so that is proven.
 */
final class LapInquiry {

    /** Runs with more gauges than this are not looked into; the answer would take too long. */
    private static final int MOST_GAUGES = 500;

    private final WallLayout layout;
    private final List<List<RunSpan>> spans;
    private final Masonry masonry;
    private final Shortfalls shortfalls;
    private final WorkLimit limit;
    private final Map<RunShape, RunFiller> fillers = new HashMap<>();

    LapInquiry(WallLayout layout, List<List<RunSpan>> spans, Shortfalls shortfalls, WorkLimit limit) {
        this.layout = layout;
        this.spans = spans;
        this.masonry = shortfalls.masonry();
        this.shortfalls = shortfalls;
        this.limit = limit;
    }

    /** The neighbours of a run, as they are laid, that leave no filling of it with fewer cuts. */
    CutCause.Neighbours askedBy(RunSpan span, Run run) {
        RunFiller filler = fillers.computeIfAbsent(span.shape(), shape -> new RunFiller(shape, shortfalls, limit));
        if (!filler.isSearchable(pattern(span, run).cuts() - 1, MOST_GAUGES)) {
            return CutCause.Neighbours.UNDECIDED;
        }
        boolean below = ask(filler, span, run, -1);
        boolean above = ask(filler, span, run, 1);
        boolean together = below || above || ask(filler, span, run, -1, 1);
        if (!filler.isComplete()) {
            return CutCause.Neighbours.UNDECIDED;
        }
        if (below || above) {
            return below && above
                    ? CutCause.Neighbours.EACH
                    : below ? CutCause.Neighbours.BELOW : CutCause.Neighbours.ABOVE;
        }
        return together ? CutCause.Neighbours.TOGETHER : CutCause.Neighbours.UNDECIDED;
    }

    private boolean ask(RunFiller filler, RunSpan span, Run run, int... steps) {
        Pattern laid = pattern(span, run);
        Windows windows = new Windows();
        for (int step : steps) {
            int course = span.course() + step;
            if (course >= 0 && course < spans.size()) {
                addWindows(windows, span, course);
            }
        }
        return filler.best(windows, true, new FillTable.Score(0, 0), met(laid, windows), laid.cuts() - 1).isEmpty();
    }

    private void addWindows(Windows windows, RunSpan span, int course) {
        CourseLayout neighbours = layout.courses().get(course);
        for (RunSpan other : spans.get(course)) {
            neighbours.runs().stream().filter(run -> run.from().units() == other.from())
                    .forEach(run -> windows.add(pattern(other, run), other.from() - span.from(), masonry.lap(),
                            span.shape().length()));
        }
    }

    private static int met(Pattern laid, Windows windows) {
        Windows.Grid grid = windows.grid(laid.joints());
        int met = 0;
        for (int joint = 0; joint < laid.joints(); joint++) {
            long start = laid.jointStart(joint);
            for (int window = 0; window < grid.lows().length; window++) {
                met += grid.lows()[window] < start + laid.jointTotal() && grid.highs()[window] > start ? 1 : 0;
            }
        }
        return met;
    }

    private Pattern pattern(RunSpan span, Run run) {
        long[] lengths = run.pieces().stream().mapToLong(piece -> piece.length().units()).toArray();
        Piece.Kind[] kinds = run.pieces().stream().map(Piece::kind).toArray(Piece.Kind[]::new);
        return new Pattern(span.shape(), masonry, lengths, kinds,
                run.joint().map(joint -> joint.total().units()).orElse(0L));
    }
}
