package org.coursewright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;

/** Gives commands spoilt files, in a folder of its own, and notes what they make of them. */
final class SpoiltFiles {

    private static final List<String> COMMANDS = List.of("lay", "check", "lay", "check", "takeoff", "lay", "check",
            "price", "lay", "check", "mixes", "lay", "check", "sheets");

    private final List<String> faults = new ArrayList<>();
    private final Map<Integer, Integer> statuses = new TreeMap<>();
    private final Path folder;
    private final Path sheets;
    private final EveryTable tables;
    private final String project;

    SpoiltFiles(Path parent) throws IOException {
        folder = Files.createDirectory(parent.resolve("tables"));
        sheets = Files.createDirectory(parent.resolve("sheets"));
        tables = EveryTable.in(folder);
        expect(0, "new takes what is not spoilt", tables.make().status() == 0);
        expect(0, "price tells of missing prices", CommandRun.of("price", tables.project()).status() == 1);
        project = Files.readString(tables.project());
    }

    List<String> faults() {
        return faults;
    }

    /** @return how many commands ended with each status */
    Map<Integer, Integer> statuses() {
        return statuses;
    }

    /** Of every four, one spoils a schedule, one a table of an estimate and two a project. */
    void spoil(int seed) throws IOException {
        switch (seed % 4) {
            case 0 -> spoilSchedule(seed);
            case 2 -> spoilEstimate(seed);
            default -> spoilProject(seed);
        }
    }

    private void spoilSchedule(int seed) throws IOException {
        String name = EveryTable.SCHEDULES.get(seed / 2 % 3);
        Path spoilt = folder.resolve("spoilt.csv");
        Files.write(spoilt, new Mutation(seed).of(Files.readString(tables.schedule(name))));
        make(seed, name, spoilt);
        Files.delete(spoilt);
    }

    private void spoilEstimate(int seed) throws IOException {
        List<String> names = EveryTable.estimateTables();
        String name = names.get(seed / 4 % names.size());
        Path spoilt = tables.estimateTable(name);
        Files.write(spoilt, new Mutation(seed).of(EveryTable.estimateText(name)));
        make(seed, "walls", tables.schedule("walls"));
        Files.writeString(spoilt, EveryTable.estimateText(name));
    }

    private void make(int seed, String schedule, Path file) throws IOException {
        Files.deleteIfExists(tables.project());
        long before = count();
        CommandRun run = tables.make(schedule, file);
        boolean made = run.status() == 0;
        judge(seed, "new", run, made);
        expect(seed, "new leaves nothing half written",
                made == Files.exists(tables.project()) && count() == before + (made ? 1 : 0));
        if (made && seed % 8 == 0) {
            use(seed, "lay");
        }
        if (made && seed % 24 == 2) {
            use(seed, "price");
        }
    }

    private void use(int seed, String command) {
        CommandRun run = CommandRun.of(command, tables.project(), "--format", "json");
        judge(seed, command + " of what new made", run, run.status() < 2);
        expect(seed, "new makes what " + command + " takes", run.status() < 2);
    }

    private void spoilProject(int seed) throws IOException {
        Files.write(tables.project(), new Mutation(seed).of(project));
        String command = COMMANDS.get(seed / 2 % COMMANDS.size());
        CommandRun run = command.equals("sheets")
                ? CommandRun.of(command, tables.project(), "--out", sheets, "--format", "json")
                : CommandRun.of(command, tables.project(), "--format", "json");
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
}
