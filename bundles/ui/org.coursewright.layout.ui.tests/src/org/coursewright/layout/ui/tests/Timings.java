package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Figures that are left in a file of the folder target, each in a line of its own. The limits are ten times the aims, for the
 * machine may be busy with other things.
 *
 * @param file in which they are left
 */
record Timings(Path file) {

    private static final int TOLERATED = 10;

    static Timings in(String name) {
        return new Timings(Path.of("target", name));
    }

    /** Notes times in nanoseconds. */
    void note(String what, long[] taken) throws IOException {
        List<String> lines = new ArrayList<>(Files.exists(file) ? Files.readAllLines(file) : List.of());
        lines.removeIf(line -> line.startsWith(what + ": "));
        lines.add(String.format(Locale.ENGLISH, "%s: median %.1f ms, 95 %% within %.1f ms, %d times", what,
                part(taken, 50), part(taken, 95), taken.length));
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.write(file, lines);
    }

    /** Notes them, and fails if the greatest but 5 % are far beyond the aim. */
    void note(Duration aim, String what, long[] taken) throws IOException {
        note(what, taken);
        double late = part(taken, 95);
        assertTrue(late < aim.multipliedBy(TOLERATED).toMillis(), () -> what + ": " + late + " ms");
    }

    private static double part(long[] taken, int percent) {
        long[] sorted = taken.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length * percent / 100] / 1e6;
    }
}
