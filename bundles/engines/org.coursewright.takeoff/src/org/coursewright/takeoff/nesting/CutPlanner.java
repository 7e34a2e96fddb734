package org.coursewright.takeoff.nesting;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Map;
import java.util.SortedMap;

import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.takeoff.nesting.internal.CutSolver;

/**
 * Plans which pieces to cut from which units so that as few units as possible are cut.
 *
 * <p>Exact within its limit of search: almost always the bound of the relaxation is met, which proves the plan at once.
 * Otherwise branch and bound goes on until the plan is proven or the limit is reached; then the plan is the best found
 * and is not said to be proven.
 */
public final class CutPlanner {

    /** Nodes of search that {@link #CutPlanner()} allows; takes seconds at most. */
    public static final int USUAL_LIMIT = 200_000;

    private final int limit;

    /** A planner with the usual limit of search. */
    public CutPlanner() {
        this(USUAL_LIMIT);
    }

    /** @param limit nodes of search after which the best plan found is returned, zero or more */
    public CutPlanner(int limit) {
        require(limit >= 0, "The limit of search is %d nodes: it must not be negative.", limit);
        this.limit = limit;
    }

    /**
     * @param stock what is cut
     * @param pieces how many of each length are wanted, zero or more; no piece is longer than the unit
     * @param progress asked whether the plan is still wanted
     * @return the plan; empty of patterns if no pieces are wanted
     * @throws org.coursewright.takeoff.InvalidTakeoffException if a piece cannot be cut from the unit
     * @throws java.util.concurrent.CancellationException if the plan is no longer wanted
     */
    public CutPlan plan(CutStock stock, SortedMap<Length, Long> pieces, Progress progress) {
        for (Map.Entry<Length, Long> piece : pieces.entrySet()) {
            require(piece.getKey().signum() > 0 && piece.getValue() >= 0,
                    "%d pieces of %s are to be cut: lengths must be above zero and counts not negative.",
                    piece.getValue(), piece.getKey());
            require(!stock.sizeOf(piece.getKey()).isGreaterThan(stock.capacity()),
                    "A piece of %s cannot be cut from a unit of %s: use a longer unit or a special.", piece.getKey(),
                    stock.length());
        }
        return new CutSolver(stock, pieces, limit, progress).solve();
    }
}
