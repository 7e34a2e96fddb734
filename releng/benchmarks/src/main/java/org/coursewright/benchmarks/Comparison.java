package org.coursewright.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.coursewright.benchmarks.walls.SmallWalls;
import org.coursewright.bond.BondRequest;

/**
 * Lays small random buildings with the engine and with a general-purpose constraint solver, and reports where they
 * differ.
 *
 * <p>Arguments: number of buildings, seed, most seconds for a search of the solver on a wall (its
 * own deterministic seconds, alike on every machine), report file. Exit status 1 if the
 * verifier finds a fault, a claim is refuted, or a layout is worse than a proven one.
 */
public final class Comparison {

    private static final PrintStream OUT = System.out;
    private static final int WARM_UP_ROUNDS = 12;
    private static final int WARM_UP_BUILDINGS = 300;

    private Comparison() {
    }

    public static void main(String[] arguments) throws IOException {
        int count = Integer.parseInt(arguments[0]);
        long seed = Long.parseLong(arguments[1]);
        double limit = Double.parseDouble(arguments[2]);
        warmUp(seed);
        List<BuildingComparison> buildings = new ArrayList<>();
        for (int index = 0; index < count; index++) {
            BuildingComparison building = compare(seed, index, limit);
            building.findings().forEach(OUT::println);
            buildings.add(building);
        }
        ComparisonReport report = new ComparisonReport(buildings, "%d %d %s".formatted(count, seed, arguments[2]));
        Files.writeString(Path.of(arguments[3]), report.text());
        OUT.println(report.text());
        if (!report.isClean()) {
            System.exit(1);
        }
    }

    private static BuildingComparison compare(long seed, int index, double limit) {
        BondRequest request = SmallWalls.of(seed, index);
        String name = "SmallWalls.of(%d, %d) %s".formatted(seed, index, SmallWalls.kind(index));
        return BuildingComparison.of(name, request, limit);
    }

    /**
     * The engine is measured as it runs in a session that has been open for a while: its code is compiled by then, as the
     * solver's always is.
     */
    private static void warmUp(long seed) {
        for (int round = 0; round < WARM_UP_ROUNDS; round++) {
            for (int index = 0; index < WARM_UP_BUILDINGS; index++) {
                Engine.lay(SmallWalls.of(seed + 1, index));
            }
        }
    }
}
