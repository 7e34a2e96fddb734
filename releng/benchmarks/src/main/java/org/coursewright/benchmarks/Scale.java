package org.coursewright.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.coursewright.benchmarks.walls.RandomWalls;
import org.coursewright.bond.BondRequest;

/**
 * How time and memory grow with the building: random walls, 5 to 200 of them.
 *
 * <p>Arguments: seed, folder for {@code bond-scale.md} and {@code bond-scale.svg}.
 */
public final class Scale {

    private static final int[] SIZES = {5, 20, 60, 200};
    private static final PrintStream OUT = System.out;

    private Scale() {
    }

    public static void main(String[] arguments) throws IOException {
        long seed = Long.parseLong(arguments[0]);
        Path folder = Path.of(arguments[1]);
        Engine.lay(RandomWalls.of(seed + 1, 20));
        Engine.lay(RandomWalls.of(seed + 2, 20));
        List<ScalePoint> points = new ArrayList<>();
        for (int size : SIZES) {
            BondRequest request = RandomWalls.of(seed, size);
            points.add(ScalePoint.measure(request));
            OUT.println(points.get(points.size() - 1));
        }
        ScaleReport report = new ScaleReport(points, arguments[0]);
        Files.writeString(folder.resolve("bond-scale.md"), report.text());
        Files.writeString(folder.resolve("bond-scale.svg"), new ScaleChart(points).svg());
        OUT.println(report.text());
    }
}
