package org.coursewright.core.bond;

import java.util.List;
import java.util.Objects;

import org.coursewright.bond.CutCause;
import org.coursewright.bond.CutReason;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.NearestLengths;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.RunBound;
import org.coursewright.measure.LengthFormat;

/** Says why pieces of a wall are cut. */
public final class CutWords {

    private final LengthFormat format;
    private final BoundWords bounds;

    /**
     * @param format of lengths, not null
     * @param wall mark of the wall, not null
     * @param meetings of the building, not null
     */
    public CutWords(LengthFormat format, String wall, List<Meeting> meetings) {
        this.format = Objects.requireNonNull(format, "format");
        this.bounds = new BoundWords(wall, meetings);
    }

    /**
     * Says what one cause is.
     *
     * @param reason of a run, not null
     * @param cause one of its causes, not null
     * @return whole sentences, the same for runs that are alike but for their course
     */
    public String of(CutReason reason, CutCause cause) {
        if (cause instanceof CutCause.RunLength length) {
            return "%s is %s long and needs %s by itself.%s".formatted(stretch(reason),
                    format.format(reason.length()), cuts(needed(reason)), sparing(length.sparing(), needed(reason)));
        } else if (cause instanceof CutCause.Turn turn) {
            return "%s is %s long. If the turns at the meeting with %s were the other way round, it would need %s fewer.%s"
                    .formatted(stretch(reason), format.format(reason.length()), bounds.others(turn.meeting()),
                            cuts(turn.cuts()), sparing(turn.sparing(), needed(reason)));
        } else if (cause instanceof CutCause.Lap lap) {
            return "%s could be filled with fewer cuts%s.".formatted(stretch(reason), neighbours(lap));
        }
        return cause instanceof CutCause.Pinned
                ? "%s could be filled with fewer cuts, but not as it is pinned.".formatted(stretch(reason))
                : "The pieces lie under the slope of the gable.";
    }

    private static String neighbours(CutCause.Lap lap) {
        return switch (lap.askedBy()) {
            case BELOW -> ", but not so that its joints lap those of the course below";
            case ABOVE -> ", but not so that its joints lap those of the course above";
            case EACH -> ", but not so that its joints lap those of the course below, nor those of the course above";
            case TOGETHER -> ", but not so that its joints lap those of both the course below and the course above";
            case UNDECIDED -> "; the laps with the courses below and above ask for more, as far as was found";
        };
    }

    private String stretch(CutReason reason) {
        String name = isPier(reason) ? "The pier" : "The run";
        String start = bounds.of(reason.start());
        String end = bounds.of(reason.end());
        return start.equals(end)
                ? "%s with %s at both ends".formatted(name, start)
                : "%s between %s and %s".formatted(name, start, end);
    }

    private static boolean isPier(CutReason reason) {
        return isOpening(reason.start()) && isOpening(reason.end());
    }

    private static boolean isOpening(RunBound bound) {
        return bound instanceof RunBound.Interrupted interrupted
                && interrupted.obstacle().kind() == Obstacle.Kind.OPENING;
    }

    /** Cuts without which the run cannot be filled as it is. */
    private static int needed(CutReason reason) {
        return reason.causes().stream()
                .filter(cause -> cause instanceof CutCause.RunLength || cause instanceof CutCause.Turn)
                .mapToInt(CutCause::cuts).sum();
    }

    private String sparing(NearestLengths lengths, int needed) {
        String fewer = needed == 1 ? "none" : "fewer";
        return new NearestWords(format).of(lengths).map(text -> " At %s it would need %s.".formatted(text, fewer))
                .orElse("");
    }

    private static String cuts(int count) {
        return count == 1 ? "1 cut" : count + " cuts";
    }
}
