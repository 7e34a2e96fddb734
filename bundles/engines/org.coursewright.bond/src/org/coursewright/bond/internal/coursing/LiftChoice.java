package org.coursewright.bond.internal.coursing;

import java.util.Optional;

import org.coursewright.bond.BedRule;
import org.coursewright.bond.Lift;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;

/**
 * Heights that whole courses reach: n courses reach every height from n times the unit and the least bed joint to n times
 * the unit and the most.
 */
final class LiftChoice {

    private final long thin;
    private final long thick;
    private final BedRule rule;

    LiftChoice(BedRule rule) {
        this.rule = rule;
        thin = rule.unitHeight().plus(rule.least()).units();
        thick = rule.unitHeight().plus(rule.most()).units();
    }

    /** The lift between two heights whose bed joint is nearest to the nominal. */
    Optional<Lift> between(Length bottom, Length top) {
        long rise = top.minus(bottom).units();
        Optional<Lift> best = Optional.empty();
        for (long courses = Math.max(1, -Math.floorDiv(-rise, thick)); courses <= rise / thin; courses++) {
            LengthRatio bed = new LengthRatio(Length.ofUnits(rise - courses * rule.unitHeight().units()),
                    Math.toIntExact(courses));
            Lift lift = new Lift(bottom, top, bed);
            if (best.isEmpty() || unevenness(lift) < unevenness(best.get())) {
                best = Optional.of(lift);
            }
        }
        return best;
    }

    /** How far the bed joints of the lift together differ from nominal ones. */
    long unevenness(Lift lift) {
        return Math.abs(lift.bed().total().units() - lift.courses() * rule.nominal().units());
    }

    /** The nearest height in that direction that can be reached from the bottom, and from which the top, if any, can. */
    Optional<Length> nearest(Length height, Length bottom, Optional<Length> top, int direction) {
        long rise = height.minus(bottom).units();
        long limit = top.map(length -> length.minus(bottom).units()).orElse(rise + thick);
        Optional<Long> nearest = Optional.empty();
        for (long courses = 1; courses * thin <= limit; courses++) {
            long from = courses * thin;
            long to = Math.min(courses * thick, limit);
            nearest = nearer(rise, nearest, top.isPresent()
                    ? closest(rise, from, to, limit, direction)
                    : closest(rise, from, to, direction));
        }
        return nearest.map(units -> bottom.plus(Length.ofUnits(units)));
    }

    /** The same where the rest, up to the top, must be whole courses too. */
    private Optional<Long> closest(long rise, long from, long to, long limit, int direction) {
        Optional<Long> nearest = Optional.empty();
        for (long above = 1; limit - above * thin >= from; above++) {
            nearest = nearer(rise, nearest, closest(rise, Math.max(from, limit - above * thick),
                    Math.min(to, limit - above * thin), direction));
        }
        return nearest;
    }

    private static Optional<Long> closest(long rise, long from, long to, int direction) {
        long low = direction < 0 ? from : Math.max(from, rise);
        long high = direction < 0 ? Math.min(to, rise) : to;
        return low > high ? Optional.empty() : Optional.of(direction < 0 ? high : low);
    }

    private static Optional<Long> nearer(long rise, Optional<Long> one, Optional<Long> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.or(() -> other);
        }
        return Math.abs(other.get() - rise) < Math.abs(one.get() - rise) ? other : one;
    }
}
