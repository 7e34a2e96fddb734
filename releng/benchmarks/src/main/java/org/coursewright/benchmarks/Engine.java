package org.coursewright.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.measure.Progress;

/** The engine that is measured. */
final class Engine {

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final BondSolver SOLVER = BondSolver.standard();

    private Engine() {
    }

    static BondResult lay(BondRequest request) {
        return SOLVER.solve(request, Progress.NONE);
    }

    /** @return the layout and the processor time it took, the best of so many tries */
    static Timed timed(BondRequest request, int tries) {
        BondResult result = lay(request);
        long best = Long.MAX_VALUE;
        for (int attempt = 0; attempt < tries; attempt++) {
            long started = THREADS.getCurrentThreadCpuTime();
            result = lay(request);
            best = Math.min(best, THREADS.getCurrentThreadCpuTime() - started);
        }
        return new Timed(result, best / 1e9);
    }

    /**
     * A layout and its time.
     *
     * @param result the layout
     * @param seconds processor time taken by the calling thread (s)
     */
    record Timed(BondResult result, double seconds) {
    }
}
