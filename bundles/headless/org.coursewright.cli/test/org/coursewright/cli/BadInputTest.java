package org.coursewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is wrong with files is told plainly, with exit status 2, and nothing is half written. */
class BadInputTest {

    @TempDir
    Path folder;

    private Schedules schedules;

    @BeforeEach
    void setUp() throws IOException {
        schedules = Schedules.twoRooms(folder);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            W6,5,5,5,5,14x10x4,,0,90,1      | walls.csv, line 7, column to_x: The wall begins and ends at the same point
            W5,0,50,20',50,14x10x4,,0,90,1  | walls.csv, line 7, column mark: "W5" is already the mark of line 6.
            W6,5',3',15',3',14x10x4,,0,90,1 | walls.csv, line 7: walls W5 and W6: They cross at
            W6,../../x,0,1,0,14x10x4,,,90,1 | walls.csv, line 7, column from_x: "../../x" is not a length
            """)
    void badWallStopsNew(String row, String message) throws IOException {
        schedules.write("walls.csv", Schedules.WALLS + row + "\n");
        assertNewRefused(message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            D3,W1,door,6',36,0,81,none,,  | openings.csv, line 5, column offset: opening D3 in wall W1: It overlaps opening D1.
            D3,W1,door,19',36,0,81,none,, | openings.csv, line 5, column offset: opening D3 in wall W1: It reaches from 19'-0" to 22'-0"
            d1,W1,door,12',36,0,81,none,, | openings.csv, line 5, column mark: "d1" is already the mark of line 2.
            """)
    void badOpeningStopsNew(String row, String message) throws IOException {
        schedules.write("openings.csv", Schedules.OPENINGS + row + "\n");
        assertNewRefused(message);
    }

    @Test
    void emptyScheduleStopsNew() throws IOException {
        schedules.write("walls.csv", "");
        assertNewRefused("walls.csv: The file is empty.");
    }

    @Test
    void truncatedScheduleStopsNew() throws IOException {
        schedules.write("walls.csv", Schedules.WALLS.substring(0, Schedules.WALLS.length() - 30));
        assertNewRefused("walls.csv, line 6, column ");
    }

    @Test
    void wronglyEncodedScheduleStopsNew() throws IOException {
        Files.write(schedules.file("openings.csv"), Schedules.OPENINGS.getBytes(StandardCharsets.ISO_8859_1));
        assertNewRefused("openings.csv, line 2: Byte 0xB1 is not UTF-8 text. Save the file as UTF-8");
    }

    @Test
    void nulByteStopsNew() throws IOException {
        schedules.write("walls.csv", Schedules.WALLS.replace("W3", "W\0"));
        assertNewRefused("walls.csv, line 4: The file contains a NUL byte");
    }

    @Test
    void lineOfAHundredMegabytesStopsNewAtOnce() throws IOException {
        try (OutputStream out = Files.newOutputStream(schedules.file("walls.csv"))) {
            byte[] part = "W1,0,".repeat(200_000).getBytes(StandardCharsets.US_ASCII);
            for (int i = 0; i < 100; i++) {
                out.write(part);
            }
        }
        assertNewRefused("walls.csv, line 1: The line is longer than 64 KiB");
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "describe", "lay"})
    void missingProjectIsRefused(String command) {
        assertRefused(CommandRun.of(command, schedules.project()), "rooms.coursewright");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "mark,x\n", "<?xml version=\"1.0\"?><project", "<a/>", "\0\0", "PK\u0003\u0004", "{}",
            "<?xml version=\"1.0\"?><!DOCTYPE p [<!ENTITY a \"a\"><!ENTITY b \"&a;&a;&a;\">]><p>&b;</p>"})
    void whatIsNoProjectIsRefused(String text) throws IOException {
        schedules.write("rooms.coursewright", text);
        for (String command : List.of("check", "describe", "lay")) {
            assertRefused(CommandRun.of(command, schedules.project()), "rooms.coursewright");
        }
    }

    @Test
    void truncatedProjectIsRefused() throws IOException {
        schedules.make();
        String text = Files.readString(schedules.project());
        for (int length = 0; length < text.length() - 1; length += text.length() / 40) {
            Files.writeString(schedules.project(), text.substring(0, length));
            assertRefused(CommandRun.of("lay", schedules.project()), "rooms.coursewright");
        }
    }

    @Test
    void projectThatReachesForAnotherFileIsRefused() throws IOException {
        schedules.make();
        String text = Files.readString(schedules.project());
        Files.writeString(schedules.project(),
                text.replaceFirst("<unitTypes [^>]*/>", "<unitTypes href=\"../other.coursewright#_a\"/>"));
        assertRefused(CommandRun.of("lay", schedules.project()), "rooms.coursewright");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            mark="W2"       | mark="w1"       | wall w1: Another wall has the same mark.
            offset="1219    | offset="91219   | opening D1 in wall W1: It reaches from
            toX="3048 mm"   | toX="9048 mm"   | walls
            """)
    void projectThatContradictsItselfIsRefused(String from, String to, String message) throws IOException {
        schedules.make();
        String text = Files.readString(schedules.project());
        assertThat(text).contains(from);
        Files.writeString(schedules.project(), text.replace(from, to));
        assertRefused(CommandRun.of("lay", schedules.project()), message);
        CommandRun check = CommandRun.of("check", schedules.project());
        assertThat(check.status()).isEqualTo(2);
        assertThat(check.out()).contains("invalid: " + message);
    }

    private void assertNewRefused(String message) throws IOException {
        assertRefused(schedules.make(), message);
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactlyInAnyOrder("walls.csv",
                    "openings.csv");
        }
    }

    private static void assertRefused(CommandRun run, String message) {
        assertThat(run.err()).contains(message).doesNotContain("Exception");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
    }
}
