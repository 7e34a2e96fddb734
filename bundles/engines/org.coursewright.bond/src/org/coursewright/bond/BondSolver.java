package org.coursewright.bond;

import org.coursewright.bond.internal.building.RememberingBondSolver;
import org.coursewright.bond.internal.building.StandardBondSolver;
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
     * A solver for a building that is being changed: it remembers what it laid in its last calls, so that after an edit
     * only the walls that changed, and those that share a corner with them, have to be laid. What {@link #solve} answers is
     * the same as with {@link #standard()}, whatever it was asked before; what {@link #first} answers may depend on that. Safe for use from several threads; one call waits for
     * another.
     *
     * @return a new solver that remembers nothing yet
     */
    static BondSolver remembering() {
        return new RememberingBondSolver();
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

    /**
     * Lays every wall soon: meetings that nobody pinned are handed as in the solver's last full answer if it remembers
     * one, otherwise as usual. {@link #solve} may find a better handing. A solver that has no quicker way answers fully;
     * {@link BondResult#effort()} says which it is.
     *
     * @param request what to lay, not null
     * @param progress hears how far the work is and may cancel it, not null
     * @return a layout of every wall, in the order of the request
     * @throws InvalidBondRequestException if the request contradicts itself
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    default BondResult first(BondRequest request, Progress progress) {
        return solve(request, progress);
    }
}
