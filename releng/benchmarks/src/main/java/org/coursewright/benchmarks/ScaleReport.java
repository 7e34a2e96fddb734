package org.coursewright.benchmarks;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Tells in a table how time and memory grow with the building. */
final class ScaleReport {

    private final List<ScalePoint> points;
    private final String seed;

    ScaleReport(List<ScalePoint> points, String seed) {
        this.points = points;
        this.seed = seed;
    }

    String text() {
        return """
                # Bond engine: time and memory by size of the building

                Deliberately hostile random walls (8 to 80 ft, 8 to 30 courses, up to five openings; `RandomWalls`), laid as
                one building by the engine once warm. Memory is the most in use after a garbage collection while the
                building was laid, the result included, the program itself left out. Cuts can only be compared at equal lap violations.

                Made %s by

                    releng/benchmarks/run.sh scale %s

                %s

                | walls | pieces | processor time (s) | memory (MB) | called optimal | runs unfilled | lap violations | cuts | faults |
                | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
                %s

                ![Time by number of walls](bond-scale.svg)
                """
                .formatted(RunOn.today(), seed, RunOn.machine(),
                        points.stream().map(ScaleReport::row).collect(Collectors.joining("\n")));
    }

    private static String row(ScalePoint point) {
        return String.format(Locale.ROOT, "| %d | %d | %.2f | %.0f | %d | %d | %d | %d | %d |", point.walls(),
                point.units(), point.seconds(), point.megabytes(), point.proven(), point.score().unfillable(),
                point.score().lapViolations(), point.score().cuts(), point.faults());
    }
}
