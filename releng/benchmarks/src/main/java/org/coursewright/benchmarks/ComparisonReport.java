package org.coursewright.benchmarks;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/** Tells in a page how the engine compares with the reference solver. */
final class ComparisonReport {

    private final List<BuildingComparison> buildings;
    private final List<WallComparison> walls;
    private final String arguments;

    ComparisonReport(List<BuildingComparison> buildings, String arguments) {
        this.buildings = buildings;
        this.walls = buildings.stream().flatMap(building -> building.walls().stream()).toList();
        this.arguments = arguments;
    }

    /** @return whether nothing is faulty, refuted or worse than proven */
    boolean isClean() {
        return buildings.stream().allMatch(building -> building.faults().isEmpty() && !building.isHandingWorse())
                && count(wall -> wall.refutation().isPresent()) == 0
                && count(wall -> wall.reference().proven() && wall.order() > 0) == 0;
    }

    private long count(Predicate<WallComparison> condition) {
        return walls.stream().filter(condition).count();
    }

    String text() {
        return """
                # Bond engine against a general-purpose constraint solver

                Small random buildings (plain walls, openings with lintels, gables, bond beams, corners, bonded tees), each
                laid by the engine and, wall by wall with the corners handed alike, by OR-Tools CP-SAT on the model that
                states the definitions one by one (`GeneralModel`). Every layout of the engine is recomputed by
                `LayoutVerifier`, which shares no code with it. Compared are lap violations first, cut pieces second. The engine weighs
                every handing of corners and tees, so the solver's time is that for all of them.

                Made %s by

                    releng/benchmarks/run.sh compare %s

                %s

                | walls | |
                | --- | ---: |
                | compared | %d |
                | proven by the solver within its time | %d |
                | … engine equal | %d |
                | … engine worse | %d |
                | not proven by the solver | %d |
                | … engine better than what it found | %d |
                | … engine equal to what it found | %d |
                | … engine worse than what it found | %d |
                | called optimal by the engine | %d |
                | claims of the engine refuted | %d |

                | buildings | |
                | --- | ---: |
                | compared | %d |
                | with faults found by the verifier | %d |
                | with two or more handings, all proven | %d |
                | … where another handing is better | %d |
                | solver's processor time over engine's at equal, proven result: compared | %d |
                | … median | %s |
                | … worst | %s |
                | … at least 1000 | %d |
                | the same, with those that only the engine proves, at the time the solver has used up: compared | %d |
                | … median, at least | %s |
                %s"""
                .formatted(RunOn.today(), arguments, RunOn.machine(), walls.size(), proven(0) + proven(1),
                        proven(0), proven(1), count(wall -> !wall.reference().proven()), unproven(-1), unproven(0),
                        unproven(1), count(wall -> wall.engine().optimal()),
                        count(wall -> wall.refutation().isPresent()), buildings.size(),
                        buildings.stream().filter(building -> !building.faults().isEmpty()).count(),
                        buildings.stream().filter(building -> building.walls().size() > 1)
                                .filter(building -> building.others().best().isPresent()).count(),
                        buildings.stream().filter(BuildingComparison::isHandingWorse).count(), ratios().size(),
                        share(ratios(), 0.5), share(ratios(), 0),
                        ratios().stream().filter(ratio -> ratio >= 1000).count(), leastRatios().size(),
                        share(leastRatios(), 0.5), findings());
    }

    private long proven(int order) {
        return count(wall -> wall.reference().proven() && Integer.signum(wall.order()) == order);
    }

    private long unproven(int order) {
        return count(wall -> !wall.reference().proven() && Integer.signum(wall.order()) == order);
    }

    private List<Double> ratios() {
        return buildings.stream().flatMap(building -> building.ratio().stream()).sorted().toList();
    }

    private List<Double> leastRatios() {
        return buildings.stream().flatMap(building -> building.leastRatio().stream()).sorted().toList();
    }

    private static String share(List<Double> ratios, double share) {
        return ratios.isEmpty()
                ? "none"
                : String.format(Locale.ROOT, "%.0f", ratios.get((int) (share * (ratios.size() - 1))));
    }

    private String findings() {
        List<String> lines = buildings.stream().flatMap(building -> building.findings().stream()).toList();
        return lines.isEmpty() ? "" : "\n## Differences\n\n- " + String.join("\n- ", lines) + "\n";
    }
}
