package org.coursewright.benchmarks.jmh;

import java.util.List;
import java.util.concurrent.TimeUnit;

import org.coursewright.benchmarks.walls.MovedOpenings;
import org.coursewright.benchmarks.walls.RandomWalls;
import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.measure.Progress;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One opening of sixty walls moved a little, each call another wall or another place: the first answer of a solver that
 * remembers the building. Goal: 16 ms at the 95th percentile for walls up to 800 units.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
@Fork(value = 1, jvmArgs = {"-Xmx256m", "-XX:+UseSerialGC"})
public class MovedOpeningBenchmark {

    private final BondSolver solver = BondSolver.remembering();
    private final List<BondRequest> moves = moves(solver);
    private int next;

    private static List<BondRequest> moves(BondSolver solver) {
        BondRequest building = RandomWalls.of(1, 60);
        return MovedOpenings.of(building, solver.solve(building, Progress.NONE));
    }

    /** @return the building with the moved opening, laid soon */
    @Benchmark
    public BondResult firstAnswer() {
        next = (next + 1) % moves.size();
        return solver.first(moves.get(next), Progress.NONE);
    }
}
