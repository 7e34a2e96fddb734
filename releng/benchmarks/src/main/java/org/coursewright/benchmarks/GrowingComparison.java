package org.coursewright.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.coursewright.benchmarks.walls.SmallWalls;
import org.coursewright.bond.BondRequest;

/**
 * How the engine and the general-purpose solver compare while walls grow from a few units to as many as that solver can
 * still prove.
 *
 * <p>Arguments: buildings of each size, seed, most deterministic seconds for a search of the solver on a wall, report
 * file. Exit status 1 as for {@link Comparison}.
 */
public final class GrowingComparison {

    private static final PrintStream OUT = System.out;
    private static final List<Integer> SIZES = List.of(1, 2, 3, 4);

    private GrowingComparison() {
    }

    public static void main(String[] arguments) throws IOException {
        int count = Integer.parseInt(arguments[0]);
        long seed = Long.parseLong(arguments[1]);
        double limit = Double.parseDouble(arguments[2]);
        for (int index = 0; index < 120; index++) {
            Engine.lay(SmallWalls.of(seed + 1, index, 2));
        }
        StringBuilder rows = new StringBuilder();
        boolean clean = true;
        for (int times : SIZES) {
            List<BuildingComparison> buildings = new ArrayList<>();
            for (int index = 0; index < count; index++) {
                BondRequest request = SmallWalls.of(seed, index, times);
                BuildingComparison building = BuildingComparison
                        .laidAsHanded("SmallWalls.of(%d, %d, %d)".formatted(seed, index, times), request, limit);
                building.findings().forEach(OUT::println);
                buildings.add(building);
            }
            clean &= new ComparisonReport(buildings, "").isClean();
            rows.append(row(buildings));
            OUT.print(row(buildings));
        }
        Files.writeString(Path.of(arguments[3]), text(rows, "%d %d %s".formatted(count, seed, arguments[2])));
        if (!clean) {
            System.exit(1);
        }
    }

    private static String text(CharSequence rows, String arguments) {
        return """
                # Engine and general-purpose solver while walls grow

                Buildings like those of [the comparison](bond-comparison.md), made longer and higher step by step, each with its
                corners handed as the engine hands them. Equal means as many lap violations and as many cut pieces. Times are
                processor time; the ratio is the solver's over the engine's where both are equal and the solver proves it.

                Made %s by

                    releng/benchmarks/run.sh growing %s

                %s

                | units a wall (median) | walls | proven by the solver | engine equal | engine worse | unproven: engine better | equal | worse | engine (ms, median) | solver (ms, median) | ratio: median | least | most |
                | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
                %s"""
                .formatted(RunOn.today(), arguments, RunOn.machine(), rows);
    }

    private static String row(List<BuildingComparison> buildings) {
        List<WallComparison> walls = buildings.stream().flatMap(building -> building.walls().stream()).toList();
        List<Double> ratios = buildings.stream().flatMap(building -> building.ratio().stream()).sorted().toList();
        return String.format(Locale.ROOT,
                "| %.0f | %d | %d | %d | %d | %d | %d | %d | %.2f | %.0f | %s | %s | %s |%n",
                median(walls.stream().map(GrowingComparison::units).toList()), walls.size(),
                count(walls, true, 0) + count(walls, true, 1), count(walls, true, 0), count(walls, true, 1),
                count(walls, false, -1), count(walls, false, 0), count(walls, false, 1),
                median(buildings.stream().map(building -> 1000 * building.engineSeconds()).toList()),
                median(buildings.stream().map(GrowingComparison::solverMilliseconds).toList()), share(ratios, 0.5),
                share(ratios, 0), share(ratios, 1));
    }

    private static double solverMilliseconds(BuildingComparison building) {
        return 1000 * building.walls().stream().mapToDouble(wall -> wall.reference().seconds()).sum();
    }

    private static long count(List<WallComparison> walls, boolean proven, int order) {
        return walls.stream().filter(wall -> wall.reference().proven() == proven)
                .filter(wall -> Integer.signum(wall.order()) == order).count();
    }

    private static double units(WallComparison wall) {
        return wall.engine().courses().stream().flatMap(course -> course.runs().stream())
                .mapToInt(run -> run.pieces().size()).sum();
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }

    private static String share(List<Double> sorted, double share) {
        return sorted.isEmpty()
                ? "–"
                : String.format(Locale.ROOT, "%.0f", sorted.get((int) (share * (sorted.size() - 1))));
    }
}
