package org.coursewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandLineEntryTest {

    @Test
    void helpListsTheCommands() {
        CommandRun run = CommandRun.of("--help");
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("new ", "check ", "describe ", "lay ", "Exit status:", "building codes");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void helpOfACommandTellsItsOptions() {
        assertThat(CommandRun.of("help", "lay").out()).contains("--wall=MARK", "--format=text|json");
        assertThat(CommandRun.of("lay", "--help").out()).isEqualTo(CommandRun.of("help", "lay").out());
    }

    @Test
    void versionIsTold() {
        assertThat(CommandRun.of("--version").out()).startsWith("coursewright ");
    }

    @Test
    void commandMustBeNamed() {
        CommandRun run = CommandRun.of();
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .startsWith(
                        "Name a command: new, check, describe, lay, fit, sheets, takeoff, price, rates, mixes, help.\nHow to use it: ");
    }

    @Test
    void unknownCommandIsRefused() {
        CommandRun run = CommandRun.of("build");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("'build'").contains("How to use it: coursewright --help");
    }

    @Test
    void argumentThatNoFileNameCanHoldIsRefused() {
        assertThat(CommandRun.of("lay", "a\0b").status()).isEqualTo(2);
    }

    @Test
    void faultOfTheProgramIsToldAsOneAndTracedOnDemand(@TempDir Path folder) throws IOException {
        Schedules schedules = Schedules.twoRooms(folder);
        String plain = faultWith(schedules);
        assertThat(plain).contains("Internal error: java.lang.IllegalStateException: broken.", "--trace")
                .doesNotContain("at org.coursewright");
        assertThat(faultWith(schedules, "--trace")).contains("Please report", "    at org.coursewright");
    }

    /** The only fault that can be brought about from outside: a stream that throws what streams never do. */
    private static String faultWith(Schedules schedules, String... more) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        try (PrintStream out = new BrokenStream();
                PrintStream toErr = new PrintStream(err, true, StandardCharsets.UTF_8)) {
            String[] args = java.util.stream.Stream
                    .concat(java.util.stream.Stream.of("new", schedules.file("rooms").toString(),
                            "--force", "--walls", schedules.file("walls.csv").toString(), "--openings",
                            schedules.file("openings.csv").toString()), java.util.stream.Stream.of(more))
                    .toArray(String[]::new);
            assertThat(CommandLineEntry.run(args, out, toErr)).isEqualTo(3);
        }
        return err.toString(StandardCharsets.UTF_8);
    }

    private static final class BrokenStream extends PrintStream {

        BrokenStream() {
            super(new ByteArrayOutputStream());
        }

        @Override
        public void print(String text) {
            throw new IllegalStateException("broken");
        }
    }
}
