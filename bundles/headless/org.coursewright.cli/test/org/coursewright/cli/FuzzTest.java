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
    private static final List<String> COMMANDS = List.of("lay", "check", "lay", "check", "takeoff", "lay", "check",
            "price",
            "lay", "check", "mixes", "lay", "check", "sheets");

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
    private static final Map<String, String> ESTIMATE = Map.of(
            "settings", "setting,value\ncurrency,USD\nmortar,M\nmix U,S\nsource U,made-on-site\nelement W1,C1010\n",
            "materials", "mark,unit,density,binder,pack,coverage\nsoil,MTQ,1200,no,,\ncement,BG,1506,yes,94 LBR,8\n",
            "mixes",
            "mark,basis,parts,water,dry_density\nM,volume,cement 1 | soil 4,20 %,\nS,mass,soil 15 | cement 1,9 %,1850\n",
            "crews", "mark,members\nC,mason 2 | tender 3\n", "plant", "mark,kind,output,lost\nsaw,saw,30 H87,10 %\n",
            "work",
            "work,crew,plant,output,learning,repetition,heights\nlay,C,,30 H87,0.9,100,0 0.7 | 4 ft 0.9\ncut,C,saw,9 H87,,,\n",
            "rates",
            "resource,kind,price,currency,unit,as_of,low,high,moves_with\nsoil,material,4,USD,MTQ,2026-10-01,0.9,1.2,fuel\n"
                    + "mason,labour,30,USD,HUR,,,,\nU 6 3/4 in,material,1.10,USD,H87,2026-09-01,,,\n",
            "beams", "mark,walls,width,depth,bar,lines,stock,lap\nG1,W1 W2,16 in,12 in,#4,2,20 ft,24 in\n",
            "finishes", "mark,thickness,walls\nF,1/2 in,W1\n",
            "scenarios", "mark,changes\nS,W1: header | U: bought | specials: cut\n");
    private static final String UNITS = """
            mark,length,width,height,mass,special_lengths,shortest_piece
            U,14,10,4,30 lb,6 3/4 | 10,3
            """;

    @TempDir
    Path folder;
    @TempDir
    Path sheets;

    private final List<String> faults = new ArrayList<>();
    private final Map<Integer, Integer> statuses = new TreeMap<>();

    @Test
    void spoiltFilesAreRefusedOrUsedButNeverBreakACommand() throws IOException {
        Schedules schedules = new Schedules(folder);
        writeSchedules(schedules);
        assertThat(make(schedules, "--walls", schedules.file("walls.csv")).status()).isZero();
        assertThat(CommandRun.of("price", schedules.project()).status()).as("prices missing").isEqualTo(1);
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
        boolean plan = seed % 4 == 0;
        String name = List.of("walls", "openings", "units").get(seed / 2 % 3);
        Path spoilt = schedules.file("spoilt.csv");
        Files.write(spoilt, new Mutation(seed).of(Files.readString(schedules.file(name + ".csv"))));
        if (!plan) {
            Files.writeString(spoilt, Files.readString(schedules.file(name + ".csv")));
            spoilEstimate(schedules, seed);
        }
        CommandRun run = make(schedules, "--" + name, spoilt);
        writeEstimate(schedules);
        judge(seed, "new", run, run.status() == 0);
        expect(seed, "new leaves nothing half written", (run.status() == 0) == Files.exists(schedules.project())
                && count() == (run.status() == 0 ? 6 : 5));
        if (run.status() == 0 && seed % 8 == 0) {
            CommandRun lay = CommandRun.of("lay", schedules.project(), "--format", "json");
            judge(seed, "lay of what new made", lay, true);
            expect(seed, "new makes what lay takes", lay.status() < 2);
        }
        if (run.status() == 0 && seed % 24 == 2) {
            CommandRun price = CommandRun.of("price", schedules.project(), "--format", "json");
            judge(seed, "price of what new made", price, price.status() < 2);
            expect(seed, "new makes what price takes", price.status() < 2);
        }
    }

    private static void spoilEstimate(Schedules schedules, int seed) throws IOException {
        List<String> names = ESTIMATE.keySet().stream().sorted().toList();
        String name = names.get(seed / 4 % names.size());
        Files.write(schedules.folder().resolve("estimate").resolve(name + ".csv"), new Mutation(seed).of(ESTIMATE.get(
                name)));
    }

    private void spoilProject(Schedules schedules, String project, int seed) throws IOException {
        Files.write(schedules.project(), new Mutation(seed).of(project));
        String command = COMMANDS.get(seed / 2 % COMMANDS.size());
        CommandRun run = command.equals("sheets")
                ? CommandRun.of(command, schedules.project(), "--out", sheets, "--format", "json")
                : CommandRun.of(command, schedules.project(), "--format", "json");
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
        writeEstimate(schedules);
    }

    private static void writeEstimate(Schedules schedules) throws IOException {
        Path estimate = Files.createDirectories(schedules.folder().resolve("estimate"));
        for (Map.Entry<String, String> table : ESTIMATE.entrySet()) {
            Files.writeString(estimate.resolve(table.getKey() + ".csv"), table.getValue());
        }
    }

    /** Makes a project of the schedules, one of them from another file. */
    private static CommandRun make(Schedules schedules, String instead, Path file) {
        List<Object> args = new ArrayList<>(List.of("new", schedules.project(), "--format", "json", "--estimate",
                schedules.folder().resolve("estimate"), instead, file));
        for (String name : List.of("walls", "openings", "units")) {
            if (!instead.equals("--" + name)) {
                args.addAll(List.of("--" + name, schedules.file(name + ".csv")));
            }
        }
        return CommandRun.of(args.toArray());
    }
}
