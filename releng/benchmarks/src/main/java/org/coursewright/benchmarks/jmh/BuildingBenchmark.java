package org.coursewright.benchmarks.jmh;

import java.util.concurrent.TimeUnit;

import org.coursewright.benchmarks.walls.CoordinatedBuilding;
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

/** Whole buildings of sixty walls. Goal: the random one within 1 s on one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
@Fork(value = 1, jvmArgs = {"-Xmx256m", "-XX:+UseSerialGC"})
public class BuildingBenchmark {

    private final BondSolver solver = BondSolver.standard();
    private final BondRequest random = RandomWalls.of(1, 60);
    private final BondRequest coordinated = CoordinatedBuilding.request();

    /** @return sixty hostile walls laid */
    @Benchmark
    public BondResult sixtyRandomWalls() {
        return solver.solve(random, Progress.NONE);
    }

    /** @return sixty walls on the module laid */
    @Benchmark
    public BondResult coordinatedBuilding() {
        return solver.solve(coordinated, Progress.NONE);
    }
}
