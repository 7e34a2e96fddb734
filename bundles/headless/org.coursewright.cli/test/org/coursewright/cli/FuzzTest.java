package org.coursewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;

/**
 * Ten thousand spoilt files: whatever is in them, a command ends with a result or a plain refusal, never with a fault of
 * the program, and never with half an output. The seed of a file that fails is in the message.
 */
class FuzzTest {

    private static final int FILES = 10_000;

    private static final String WALLS = """
            mark,from_x,from_y,to_x,to_y,unit,bond,base,height,storey,gable
            W1,0,0,7'-2 1/2",0,U,stretcher,0,18,1,
            W2,0,50,52,50,14x10x4,header,0,9,1,
            W3,0,1270 mm,0,3 m,U,stretcher,0,114.3 mm,1,
            """;
    private static final String OPENINGS = """
            mark,wall,kind,offset,width,sill,height,lintel,move,size
            D1,W1,door,28.5,29.5,0,13 1/2,14,±4,0
            N1,W3,niche,14 in,6 3/4 in,0,4.5,none,4 in,2 in
            """;
    private static final String UNITS = """
            mark,length,width,height,mass,special_lengths,shortest_piece
            U,14,10,4,30 lb,6 3/4 | 10,3
            """;

    @TempDir
    Path folder;

    private final List<String> faults = new ArrayList<>();
    private final Map<Integer, Integer> statuses = new TreeMap<>();

    @Test
    void spoiltFilesAreRefusedOrUsedButNeverBreakACommand() throws IOException {
        Schedules schedules = new Schedules(folder);
        writeSchedules(schedules);
        assertThat(make(schedules, "--walls", schedules.file("walls.csv")).status()).isZero();
        String project = Files.readString(schedules.project());
        for (int seed = 0; seed < FILES; seed += 2) {
            spoilSchedule(schedules, seed);
            spoilProject(schedules, project, seed + 1);
        }
        assertThat(faults).isEmpty();
        assertThat(statuses).containsOnlyKeys(0, 1, 2);
        assertThat(statuses.get(0)).as("files that could still be used").isGreaterThan(FILES / 20);
    }

    private void spoilSchedule(Schedules schedules, int seed) throws IOException {
        Files.deleteIfExists(schedules.project());
        String name = List.of("walls", "openings", "units").get(seed / 2 % 3);
        Path spoilt = schedules.file("spoilt.csv");
        Files.write(spoilt, new Mutation(seed).of(Files.readString(schedules.file(name + ".csv"))));
        CommandRun run = make(schedules, "--" + name, spoilt);
        judge(seed, "new", run, run.status() == 0);
        expect(seed, "new leaves nothing half written", (run.status() == 0) == Files.exists(schedules.project())
                && count() == (run.status() == 0 ? 5 : 4));
        if (run.status() == 0 && seed % 8 == 0) {
            CommandRun lay = CommandRun.of("lay", schedules.project(), "--format", "json");
            judge(seed, "lay of what new made", lay, true);
            expect(seed, "new makes what lay takes", lay.status() < 2);
        }
    }

    private void spoilProject(Schedules schedules, String project, int seed) throws IOException {
        Files.write(schedules.project(), new Mutation(seed).of(project));
        String command = seed % 4 == 1 ? "lay" : "check";
        CommandRun run = CommandRun.of(command, schedules.project(), "--format", "json");
        judge(seed, command, run, run.status() < 2 || command.equals("check") && !run.out().isEmpty());
    }

    private void judge(int seed, String command, CommandRun run, boolean hasResult) {
        statuses.merge(run.status(), 1, Integer::sum);
        expect(seed, command + " ended with status 3: " + run.err(), run.status() < 3);
        expect(seed, command + " told of an exception: " + run.err(), !run.err().contains("Exception"));
        expect(seed, command + " refused without a word", run.status() < 2 || hasResult || !run.err().isBlank());
        expect(seed, command + " wrote " + run.out().length() + " characters that are no result",
                hasResult ? isJson(seed, run.out()) : run.out().isEmpty());
    }

    private boolean isJson(int seed, String text) {
        try {
            return JsonParser.parseString(text).isJsonObject();
        } catch (JsonParseException e) {
            expect(seed, "broken JSON: " + e.getMessage(), false);
            return false;
        }
    }

    private void expect(int seed, String what, boolean holds) {
        if (!holds) {
            faults.add("seed %d: %s".formatted(seed, what));
        }
    }

    private long count() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.count();
        }
    }

    private static void writeSchedules(Schedules schedules) throws IOException {
        schedules.write("walls.csv", WALLS);
        schedules.write("openings.csv", OPENINGS);
        schedules.write("units.csv", UNITS);
    }

    /** Makes a project of the schedules, one of them from another file. */
    private static CommandRun make(Schedules schedules, String instead, Path file) {
        List<Object> args = new ArrayList<>(List.of("new", schedules.project(), "--format", "json", instead, file));
        for (String name : List.of("walls", "openings", "units")) {
            if (!instead.equals("--" + name)) {
                args.addAll(List.of("--" + name, schedules.file(name + ".csv")));
            }
        }
        return CommandRun.of(args.toArray());
    }
}
