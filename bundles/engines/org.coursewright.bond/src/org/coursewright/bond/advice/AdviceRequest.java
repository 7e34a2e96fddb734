package org.coursewright.bond.advice;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.bond.BondRequest;
import org.coursewright.measure.Length;

/**
 * A building and what may change in it.
 *
 * @param building as it is planned
 * @param adjustables what may change within its wall, each at most once
 * @param moves walls that may move sideways, each at most once
 * @param keepClear where no opening may come that is not there now
 * @param step changes are whole multiples of this, greater than zero
 * @param budget most that all changes together may come to, each counted as a distance; empty if it does not matter
 */
public record AdviceRequest(BondRequest building, List<Adjustable> adjustables, List<WallMove> moves,
        List<KeepClear> keepClear, Length step, Optional<Length> budget) {

    public AdviceRequest {
        Objects.requireNonNull(building, "building");
        adjustables = List.copyOf(adjustables);
        moves = List.copyOf(moves);
        keepClear = List.copyOf(keepClear);
        Objects.requireNonNull(step, "step");
        Objects.requireNonNull(budget, "budget");
        if (step.signum() <= 0) {
            throw new IllegalArgumentException("The step is %s: it must be greater than zero.".formatted(step));
        }
    }

    /** A building whose walls stay where they are. */
    public AdviceRequest(BondRequest building, List<Adjustable> adjustables, List<KeepClear> keepClear, Length step,
            Optional<Length> budget) {
        this(building, adjustables, List.of(), keepClear, step, budget);
    }
}
