package org.coursewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NewCommandTest {

    @TempDir
    Path folder;

    private Schedules schedules;

    @BeforeEach
    void setUp() throws IOException {
        schedules = Schedules.twoRooms(folder);
    }

    @Test
    void projectIsMadeAndTold() {
        CommandRun run = schedules.make();
        assertThat(run.status()).isZero();
        assertThat(run.out()).isEqualTo(
                "Made %s: 5 walls, 3 openings, 1 storey, 1 unit type.\n".formatted(schedules.project()));
        assertThat(run.err()).isEmpty();
        assertThat(schedules.project()).content().contains("name=\"rooms\"");
    }

    @Test
    void sameSchedulesGiveTheSameFile() throws IOException {
        schedules.make();
        byte[] first = Files.readAllBytes(schedules.project());
        assertThat(schedules.make("--force").status()).isZero();
        assertThat(schedules.project()).hasBinaryContent(first);
    }

    @Test
    void resultMayBeJson() {
        CommandRun run = schedules.make("--format", "json", "--name", "Two \"rooms\"");
        assertThat(run.json().get("schema").getAsString()).isEqualTo("coursewright.new/1");
        assertThat(run.json().get("project").getAsString()).isEqualTo("Two \"rooms\"");
        assertThat(run.json().get("openings").getAsInt()).isEqualTo(3);
    }

    @Test
    void existingFileIsReplacedOnlyWhenForced() {
        schedules.make();
        CommandRun again = schedules.make("--name", "Other");
        assertThat(again.status()).isEqualTo(2);
        assertThat(again.err()).contains("rooms.coursewright: The file exists already.", "--force");
        assertThat(schedules.project()).content().contains("name=\"rooms\"");
        assertThat(schedules.make("--name", "Other", "--force").status()).isZero();
        assertThat(schedules.project()).content().contains("name=\"Other\"");
    }

    @Test
    void warningsGoToStandardErrorAndStopNothing() throws IOException {
        schedules.write("walls.csv", Schedules.WALLS.replace("storey\n", "storey,colour\n"));
        CommandRun run = schedules.make();
        assertThat(run.status()).isZero();
        assertThat(run.err()).contains("warning: ", "walls.csv, line 1: Passed over \"colour\"");
    }

    @Test
    void nothingIsWrittenIfACellIsBad() throws IOException {
        schedules.write("openings.csv", Schedules.OPENINGS.replace("±4", "far"));
        CommandRun run = schedules.make();
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("openings.csv, line 2, column move: \"far\" is not a length");
        assertThat(files()).containsExactlyInAnyOrder("walls.csv", "openings.csv");
    }

    @Test
    void twoHundredMessagesAreShownAndTheRestCounted() throws IOException {
        schedules.write("walls.csv", Schedules.WALLS + ",,,,,,,,,\nW,x,x,x,x,x,x,x,x,x\n".repeat(100));
        CommandRun run = schedules.make();
        assertThat(run.err().lines()).hasSize(201).last().asString().startsWith("… and ").endsWith(" more.");
    }

    @Test
    void ruleIsKeptInTheProject() {
        assertThat(schedules.make("--rule", "lap=3.5 in,head=3/8:1/2:3/4").status()).isZero();
        assertThat(schedules.project()).content().contains("leastLap=\"88.9 mm\"");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --rule    | lap=3,gap=2 | --rule "lap=3,gap=2": Character 7: "gap" is unknown.
            --rule    | lap=20      | wall W1: Its least lap of 1'-8" must be at most half of what a unit shows
            --display | cm          | 'cm' is neither in nor mm.
            --format  | xml         | 'xml' is neither text nor json.
            --colour  | red         | Unknown option
            --units   | none.csv    | none.csv: There is no such file.
            """)
    void badOptionIsRefused(String option, String value, String message) {
        CommandRun run = schedules.make(option, value);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains(message);
        assertThat(run.out()).isEmpty();
        assertThat(schedules.project()).doesNotExist();
    }

    @Test
    void optionsThatMustBeThereAreNamed() {
        CommandRun run = CommandRun.of("new", folder.resolve("x"));
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("--walls", "--openings", "How to use it: coursewright new --help");
    }

    @Test
    void folderMustExist() {
        CommandRun run = CommandRun.of("new", folder.resolve("absent/x"), "--walls", schedules.file("walls.csv"),
                "--openings", schedules.file("openings.csv"));
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("There is no folder ", "absent. Make it first");
    }

    @ParameterizedTest
    @CsvSource({"/", "''", "..", "a/..", ".coursewright"})
    void targetMustBeAFile(String target) {
        CommandRun run = CommandRun.of("new", target, "--walls", schedules.file("walls.csv"), "--openings",
                schedules.file("openings.csv"));
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("This is no name of a file.");
    }

    private Stream<String> files() throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.map(file -> file.getFileName().toString()).toList().stream();
        }
    }
}
