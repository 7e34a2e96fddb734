package org.coursewright.bond.internal.filling;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;

import org.coursewright.bond.internal.choice.WorkLimit;
import org.coursewright.bond.internal.pieces.PieceSets;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunShape;

/** The fewest cuts with which runs of a wall can be filled, each by itself; proven, and remembered by shape. */
public final class LeastCuts {

    private final Masonry masonry;
    private final Shortfalls shortfalls;
    private final WorkLimit limit;
    private final Map<RunShape, OptionalInt> known = new HashMap<>();
    private final Map<RunShape, RunFiller> fillers = new HashMap<>();

    /** @param limit what is spent on runs for which counting pieces does not tell */
    public LeastCuts(Masonry masonry, Shortfalls shortfalls, WorkLimit limit) {
        this.masonry = masonry;
        this.shortfalls = shortfalls;
        this.limit = limit;
    }

    /** @return empty if nothing fills such a run */
    public OptionalInt of(RunShape shape) {
        return known.computeIfAbsent(shape, this::find);
    }

    /** What fills runs of that shape; the same one each time, as it remembers their gauges. */
    public RunFiller filler(RunShape shape) {
        return fillers.computeIfAbsent(shape, each -> new RunFiller(each, shortfalls, limit));
    }

    private OptionalInt find(RunShape shape) {
        if (!shape.isRaked() && shape.pins().isEmpty()) {
            return new PieceSets(shape, masonry).leastCuts();
        }
        RunFiller filler = filler(shape);
        OptionalInt found = filler.leastCuts();
        boolean bounded = shape.isRaked() || found.isEmpty() || filler.isComplete();
        return bounded ? found : new PieceSets(shape, masonry).leastCuts();
    }
}
