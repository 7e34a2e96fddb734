package org.coursewright.bond;

import org.coursewright.bond.internal.StandardBondSolver;
import org.coursewright.measure.Progress;

/** Lays the walls of a request. */
public interface BondSolver {

    /**
     * The solver of this engine: exact lengths, deterministic, without state.
     *
     * @return that solver
     */
    static BondSolver standard() {
        return new StandardBondSolver();
    }

    /**
     * Lays every wall.
     *
     * @param request what to lay, not null
     * @param progress hears how far the work is and may cancel it, not null
     * @return a layout of every wall, in the order of the request
     * @throws InvalidBondRequestException if the request contradicts itself
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    BondResult solve(BondRequest request, Progress progress);
}
