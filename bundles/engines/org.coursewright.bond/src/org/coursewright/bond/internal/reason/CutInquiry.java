package org.coursewright.bond.internal.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.bond.Course;
import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.CutCause;
import org.coursewright.bond.CutReason;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.NearestLengths;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.choice.WorkLimit;
import org.coursewright.bond.internal.filling.LeastCuts;
import org.coursewright.bond.internal.filling.Shortfalls;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.pieces.FillableLengths;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunFinder;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.run.RunSpan;

/**
 * Finds out why pieces of one wall are cut. First come those under a rake, then those without which the run cannot be
 * filled at all, and of these the ones that the other turn at a corner or tee would spare; the rest keep laps.
 */
public final class CutInquiry {

    /** Words of shortfalls looked at; some tens of milliseconds. */
    private static final long MOST_EFFORT = 20_000_000;

    private final WallLayout layout;
    private final Masonry masonry;
    private final List<List<RunSpan>> spans;
    private final RunBounds bounds;
    private final OtherTurns otherTurns;
    private final LeastCuts leastCuts;
    private final LapInquiry laps;

    /** @param throughOnOdd by meeting id the mark of the wall that runs through in odd courses */
    public CutInquiry(WallFace wall, WallLayout layout, List<Meeting> meetings, Map<String, String> throughOnOdd) {
        this.layout = layout;
        Handing handing = new Handing(meetings, throughOnOdd);
        masonry = Masonry.of(wall.stock(), wall.rule());
        Shortfalls shortfalls = new Shortfalls(masonry);
        WorkLimit limit = new WorkLimit(MOST_EFFORT);
        leastCuts = new LeastCuts(masonry, shortfalls, limit);
        spans = new RunFinder(wall, handing).find();
        laps = new LapInquiry(layout, spans, shortfalls, limit);
        bounds = new RunBounds(wall, handing);
        otherTurns = new OtherTurns(wall, meetings, throughOnOdd);
    }

    /** @return a reason for every run that has cut pieces */
    public List<CutReason> reasons() {
        List<CutReason> reasons = new ArrayList<>();
        for (int course = 0; course < spans.size(); course++) {
            CourseLayout laid = layout.courses().get(course);
            for (RunSpan span : spans.get(course)) {
                laid.runs().stream().filter(run -> run.from().units() == span.from()).filter(run -> cuts(run) > 0)
                        .forEach(run -> reasons.add(reason(laid.course(), span, run)));
            }
        }
        return reasons;
    }

    private static int cuts(Run run) {
        return Math.toIntExact(run.pieces().stream().filter(piece -> piece.kind() == Piece.Kind.CUT).count());
    }

    private CutReason reason(Course course, RunSpan span, Run run) {
        return new CutReason(course.number(), run.from(), run.to(), bounds.start(span), bounds.end(span),
                causes(span, run));
    }

    private List<CutCause> causes(RunSpan span, Run run) {
        RunShape shape = span.shape();
        int raked = UnderRake.cuts(run, shape);
        int rest = cuts(run) - raked;
        int needed = Math.max(0, Math.min(rest, leastCuts.of(shape).orElse(0) - raked));
        List<CutCause> causes = new ArrayList<>();
        if (raked > 0) {
            causes.add(new CutCause.Rake(raked));
        }
        int free = Math.max(0, Math.min(needed, leastCuts.of(shape.withoutPins()).orElse(0) - raked));
        if (free > 0) {
            addNeeded(causes, span, free);
        }
        if (needed > free) {
            causes.add(new CutCause.Pinned(needed - free));
        }
        if (rest > needed) {
            causes.add(new CutCause.Lap(rest - needed, laps.askedBy(span, run), layout.optimal()));
        }
        return causes;
    }

    private void addNeeded(List<CutCause> causes, RunSpan span, int needed) {
        NearestLengths sparing = span.shape().isRaked()
                ? new NearestLengths(Optional.empty(), Optional.empty())
                : new FillableLengths(masonry).nearest(span.shape(), needed - 1);
        String meeting = "";
        int left = needed;
        for (Map.Entry<String, RunSpan> other : otherTurns.of(span).entrySet()) {
            int least = leastCuts.of(other.getValue().shape().withoutPins()).orElse(needed);
            if (least < left) {
                left = least;
                meeting = other.getKey();
            }
        }
        if (left < needed) {
            causes.add(new CutCause.Turn(needed - left, meeting, sparing));
        }
        if (left > 0) {
            causes.add(new CutCause.RunLength(left, sparing));
        }
    }
}
