package org.coursewright.benchmarks;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.measure.Progress;

/** The engine that is measured. */
final class Engine {

    private static final BondSolver SOLVER = BondSolver.standard();

    private Engine() {
    }

    static BondResult lay(BondRequest request) {
        return SOLVER.solve(request, Progress.NONE);
    }

    /** @return the layout and the time it took, the best of so many tries */
    static Timed timed(BondRequest request, int tries) {
        BondResult result = lay(request);
        long best = Long.MAX_VALUE;
        for (int attempt = 0; attempt < tries; attempt++) {
            long started = System.nanoTime();
            result = lay(request);
            best = Math.min(best, System.nanoTime() - started);
        }
        return new Timed(result, best / 1e9);
    }

    /**
     * A layout and its time.
     *
     * @param result the layout
     * @param seconds time taken (s)
     */
    record Timed(BondResult result, double seconds) {
    }
}
