package org.coursewright.bond.internal.coursing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.BedRule;
import org.coursewright.bond.InvalidBondRequestException;
import org.coursewright.bond.LevelMark;
import org.coursewright.bond.Lift;
import org.coursewright.bond.MissedMark;
import org.coursewright.bond.VerticalCoursing;
import org.coursewright.measure.Length;

/**
 * Chooses which marks fall on course lines: a longest chain of marks each of which can be reached from the one before by
 * whole courses, found from the bottom up in a time that grows with the square of the number of marks.
 */
public final class LiftPlan {

    /** The best way up to a mark: from which stop, with how many marks missed on the way and how uneven. */
    private record Way(int from, Optional<Lift> lift, int missed, long uneven) {

        private static final Comparator<Way> BEST = Comparator.comparingInt(Way::missed)
                .thenComparingLong(Way::uneven).thenComparingInt(way -> -way.from);

        boolean isBetterThan(Way other) {
            return BEST.compare(this, other) < 0;
        }
    }

    private final LiftChoice choice;
    private final List<LevelMark> stops = new ArrayList<>();
    private final List<Way> ways = new ArrayList<>();

    /** @throws InvalidBondRequestException if a mark does not lie above the base */
    public LiftPlan(BedRule rule, Length base, List<LevelMark> marks) {
        choice = new LiftChoice(rule);
        stops.add(new LevelMark("base", base));
        marks.stream().sorted(Comparator.comparing(LevelMark::height)).forEach(mark -> {
            if (!mark.height().isGreaterThan(base)) {
                throw new InvalidBondRequestException("%s at %s does not lie above the base at %s: raise it.".formatted(
                        mark.name(), mark.height(), base));
            }
            stops.add(mark);
        });
    }

    /** The courses between the base and the marks that can be met, and the marks that are missed. */
    public VerticalCoursing solve() {
        ways.add(new Way(-1, Optional.empty(), 0, 0));
        for (int stop = 1; stop < stops.size(); stop++) {
            ways.add(best(stop));
        }
        List<Integer> met = met(top());
        List<Lift> lifts = new ArrayList<>();
        met.forEach(stop -> ways.get(stop).lift().ifPresent(lifts::add));
        return new VerticalCoursing(lifts, missed(met));
    }

    /** A stop that cannot be reached counts as missing itself and everything below. */
    private Way best(int stop) {
        Way best = new Way(-1, Optional.empty(), stops.size() + 1, 0);
        for (int from = 0; from < stop; from++) {
            Way before = ways.get(from);
            Length bottom = stops.get(from).height();
            Length top = stops.get(stop).height();
            if (top.equals(bottom) && from > 0) {
                best = better(best, new Way(from, Optional.empty(), before.missed + stop - from - 1, before.uneven));
            }
            Optional<Lift> lift = choice.between(bottom, top);
            if (lift.isPresent()) {
                long uneven = before.uneven + choice.unevenness(lift.get());
                best = better(best, new Way(from, lift, before.missed + stop - from - 1, uneven));
            }
        }
        return best;
    }

    private static Way better(Way one, Way other) {
        return other.isBetterThan(one) ? other : one;
    }

    /** The stop at which to end: marks above it are missed. */
    private int top() {
        int top = 0;
        int fewest = Integer.MAX_VALUE;
        for (int stop = 0; stop < stops.size(); stop++) {
            int missed = ways.get(stop).missed + stops.size() - 1 - stop;
            if (missed <= fewest) {
                fewest = missed;
                top = stop;
            }
        }
        return top;
    }

    private List<Integer> met(int top) {
        List<Integer> met = new ArrayList<>();
        for (int stop = top; stop >= 0; stop = ways.get(stop).from) {
            met.add(0, stop);
        }
        return met;
    }

    private List<MissedMark> missed(List<Integer> met) {
        List<MissedMark> missed = new ArrayList<>();
        for (int index = 0; index < met.size(); index++) {
            Length bottom = stops.get(met.get(index)).height();
            boolean last = index + 1 == met.size();
            int next = last ? stops.size() : met.get(index + 1);
            Optional<Length> top = last ? Optional.empty() : Optional.of(stops.get(next).height());
            for (int stop = met.get(index) + 1; stop < next; stop++) {
                LevelMark mark = stops.get(stop);
                missed.add(new MissedMark(mark, choice.nearest(mark.height(), bottom, top, -1),
                        choice.nearest(mark.height(), bottom, top, 1)));
            }
        }
        return missed;
    }
}
