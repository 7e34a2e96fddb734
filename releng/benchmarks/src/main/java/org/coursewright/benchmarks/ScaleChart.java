package org.coursewright.benchmarks;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Draws time and memory over the number of walls. */
final class ScaleChart {

    private static final int WIDTH = 360;
    private static final int HEIGHT = 240;
    private static final int MARGIN = 48;
    private static final int INNER_WIDTH = WIDTH - 2 * MARGIN;
    private static final int INNER_HEIGHT = HEIGHT - 2 * MARGIN;

    private final List<ScalePoint> points;

    ScaleChart(List<ScalePoint> points) {
        this.points = points;
    }

    String svg() {
        return """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %d %d" font-family="sans-serif" font-size="11">
                <title>Time and memory of the bond engine by number of walls</title>
                <rect width="100%%" height="100%%" fill="#ffffff"/>
                %s%s</svg>
                """.formatted(2 * WIDTH, HEIGHT, panel(0, "Processor time (s)", "#1b5e8a", ScalePoint::seconds),
                panel(WIDTH, "Memory (MB)", "#8a4b1b", ScalePoint::megabytes));
    }

    private String panel(int offset, String title, String colour, ToDoubleFunction<ScalePoint> value) {
        double highest = Math.max(1e-9, points.stream().mapToDouble(value).max().orElse(1));
        int widest = points.stream().mapToInt(ScalePoint::walls).max().orElse(1);
        List<Dot> dots = points.stream()
                .map(point -> new Dot(MARGIN + (double) INNER_WIDTH * point.walls() / widest,
                        HEIGHT - MARGIN - INNER_HEIGHT * value.applyAsDouble(point) / highest, point.walls(),
                        value.applyAsDouble(point)))
                .toList();
        String line = dots.stream().map(Dot::place).collect(Collectors.joining(" "));
        String marks = dots.stream().map(dot -> dot.mark(colour)).collect(Collectors.joining());
        return """
                <g transform="translate(%d 0)">
                <text x="%d" y="24" font-weight="bold">%s</text>
                <path d="M%d %d V%d H%d" fill="none" stroke="#666666"/>
                <polyline points="%d,%d %s" fill="none" stroke="%s" stroke-width="2"/>
                %s<text x="%d" y="%d" text-anchor="middle">walls</text>
                </g>
                """.formatted(offset, MARGIN, title, MARGIN, MARGIN, HEIGHT - MARGIN, WIDTH - MARGIN, MARGIN,
                HEIGHT - MARGIN, line, colour, marks, WIDTH / 2, HEIGHT - 8);
    }

    private record Dot(double x, double y, int walls, double value) {

        String place() {
            return String.format(Locale.ROOT, "%.1f,%.1f", x, y);
        }

        String mark(String colour) {
            return String.format(Locale.ROOT, """
                    <circle cx="%.1f" cy="%.1f" r="4" fill="%s"/>
                    <text x="%.1f" y="%.1f" text-anchor="end">%.3g</text>
                    <text x="%.1f" y="%d" text-anchor="middle">%d</text>
                    """, x, y, colour, x - 6, y - 6, value, x, HEIGHT - MARGIN + 16, walls);
        }
    }
}
