package org.coursewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetsCommandTest {

    @TempDir
    Path folder;

    private Schedules schedules;

    @BeforeEach
    void setUp() throws IOException {
        schedules = Schedules.twoRooms(folder);
        assertThat(schedules.make().status()).isZero();
    }

    @Test
    void everyWallGetsASheet() throws IOException {
        CommandRun run = sheets();
        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("5 sheets in ");
        assertThat(written()).containsExactly("wall-W1.pdf", "wall-W2.pdf", "wall-W3.pdf", "wall-W4.pdf",
                "wall-W5.pdf");
    }

    @Test
    void oneWallIsDrawnAtTheScaleAskedFor() throws IOException {
        CommandRun run = sheets("--wall", "w2", "--scale", "1:50", "--as", "svg", "--format", "json");
        assertThat(run.json().getAsJsonArray("sheets")).hasSize(1);
        assertThat(run.json().getAsJsonArray("sheets").get(0).getAsJsonObject().get("scale").getAsInt()).isEqualTo(50);
        assertThat(written()).containsExactly("wall-W2.svg");
        assertThat(Files.readString(out().resolve("wall-W2.svg"))).contains("Scale 1:50", "12'-10&quot;",
                "Line: 3/16&quot; off the face");
    }

    @Test
    void theSameProjectGivesTheSameFiles() throws IOException {
        sheets("--wall", "W1");
        byte[] first = Files.readAllBytes(out().resolve("wall-W1.pdf"));
        sheets("--wall", "W1");
        assertThat(Files.readAllBytes(out().resolve("wall-W1.pdf"))).isEqualTo(first);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            --wall        | W9         | --wall: There is no wall "W9". Walls are W1, W2, W3, W4, W5.
            --scale       | 1:0        | --scale: "1:0" is no scale of a sheet. Give one from 1:5 to 1:1000, such as 1:20.
            --scale       | twenty     | --scale: "twenty" is no scale of a sheet. Give one from 1:5 to 1:1000, such as 1:20.
            --scale       | 1:5000     | --scale: "1:5000" is no scale of a sheet. Give one from 1:5 to 1:1000, such as 1:20.
            --line-offset | 2 ft       | --line-offset: 2'-0" is not between 0 and 3 15/16".
            --line-offset | -1 in      | --line-offset: -1" is not between 0 and 3 15/16".
            """)
    void badOptionIsRefusedAndNothingIsWritten(String option, String value, String message) {
        CommandRun run = sheets(option + "=" + value);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isEqualTo(message + "\n");
        assertThat(out()).doesNotExist();
    }

    @Test
    void otherKindsOfFilesAndBadDatesAreRefused() {
        assertThat(sheets("--as", "dxf").err()).contains("'dxf' is neither pdf nor svg.");
        assertThat(sheets("--date", "tomorrow").status()).isEqualTo(2);
        assertThat(out()).doesNotExist();
    }

    @Test
    void folderThatCannotBeMadeIsToldWithWhatToDo() throws IOException {
        CommandRun run = CommandRun.of("sheets", schedules.project(), "--out", folder.resolve("no").resolve("where"));
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).startsWith("--out: There is no folder ").endsWith("to make where in. Make it first.\n");
        Path file = Files.writeString(folder.resolve("file"), "mine");
        CommandRun onFile = CommandRun.of("sheets", schedules.project(), "--out", file);
        assertThat(onFile.status()).isEqualTo(2);
        assertThat(onFile.err()).endsWith("is a file, not a folder. Name a folder.\n");
        assertThat(Files.readString(file)).isEqualTo("mine");
    }

    private Path out() {
        return folder.resolve("out");
    }

    private CommandRun sheets(Object... more) {
        return CommandRun.of(Stream.concat(Stream.of("sheets", schedules.project(), "--out", out()), Stream.of(more))
                .toArray());
    }

    private List<String> written() throws IOException {
        try (Stream<Path> files = Files.list(out())) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
