package org.coursewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

/** The command {@code fit}, from project to proposals and back. */
class FitCommandTest {

    /** A screen of ten units and nine joints, four courses high, its window 2 in off the joints. */
    private static final String WALLS = """
            mark,from_x,from_y,to_x,to_y,unit,bond,base,height,storey
            W1,0,0,144.5,0,14x10x4,stretcher,0,18,1
            """;

    private static final String OPENINGS = """
            mark,wall,kind,offset,width,sill,height,lintel,move,size
            N1,W1,window,45,44,0,9,none,±3,0
            """;

    @TempDir
    Path folder;

    private Path screen() throws IOException {
        Schedules schedules = new Schedules(folder);
        schedules.write("walls.csv", WALLS);
        schedules.write("openings.csv", OPENINGS);
        assertThat(schedules.make().status()).isZero();
        return schedules.project();
    }

    private static int cuts(Path project) {
        return CommandRun.of("lay", project, "--format", "json").json().getAsJsonObject("totals").get("cut")
                .getAsInt();
    }

    @Test
    void proposalsSayWhatTheySpare() throws IOException {
        Path project = screen();
        CommandRun run = CommandRun.of("fit", project, "--format", "json");
        JsonObject fit = run.json();

        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(fit.get("schema").getAsString()).isEqualTo("coursewright.fit/1");
        assertThat(fit.getAsJsonObject("before").get("cuts").getAsInt()).isEqualTo(cuts(project));
        JsonObject proposal = fit.getAsJsonArray("proposals").get(0).getAsJsonObject();
        assertThat(proposal.get("wall").getAsString()).isEqualTo("W1");
        assertThat(proposal.get("opening").getAsString()).isEqualTo("N1");
        assertThat(proposal.get("dimension").getAsString()).isEqualTo("offset");
        assertThat(proposal.get("from").getAsBigDecimal()).isEqualByComparingTo("1143");
        assertThat(proposal.get("cutsAfter").getAsInt()).isLessThan(proposal.get("cutsBefore").getAsInt());
        assertThat(proposal.getAsJsonArray("profile")).hasSize(25).anySatisfy(point -> assertThat(value(point, "value"))
                .isEqualByComparingTo(proposal.get("to").getAsBigDecimal()));
    }

    private static java.math.BigDecimal value(JsonElement object, String member) {
        return object.getAsJsonObject().get(member).getAsBigDecimal();
    }

    @Test
    void appliedProposalsGiveExactlyThePromisedCount() throws IOException {
        Path project = screen();
        CommandRun run = CommandRun.of("fit", project, "--apply", "--format", "json");

        assertThat(run.status()).isZero();
        JsonObject after = run.json().getAsJsonObject("after");
        assertThat(cuts(project)).isEqualTo(after.get("cuts").getAsInt())
                .isLessThan(run.json().getAsJsonObject("before").get("cuts").getAsInt());
        assertThat(CommandRun.of("fit", project, "--format", "json").json().getAsJsonObject("before")).isEqualTo(after);
    }

    /**
     * Three courses of a partition of 135 in between two walls, one of which may move. Nine units and ten joints come to 133 1/2
     * in at most, so every course is cut; if the partition is as short as that, only the middle one is, at both its ends.
     */
    private Path partition() throws IOException {
        Schedules schedules = new Schedules(folder);
        schedules.write("walls.csv", """
                mark,from_x,from_y,to_x,to_y,unit,bond,base,height,storey,move
                P1,0,0,145,0,14x10x4,stretcher,0,13.5,1,
                W2,0,-72.25,0,72.25,14x10x4,stretcher,0,13.5,1,
                W3,145,-72.25,145,72.25,14x10x4,stretcher,0,13.5,1,±3
                """);
        schedules.write("openings.csv", "mark,wall,kind,offset,width,sill,height,lintel\n");
        assertThat(schedules.make().status()).isZero();
        return schedules.project();
    }

    @Test
    void movedWallGivesExactlyThePromisedCount() throws IOException {
        Path project = partition();
        JsonObject fit = CommandRun.of("fit", project, "--wall", "W3", "--apply", "--format", "json").json();
        JsonObject proposal = fit.getAsJsonArray("proposals").get(0).getAsJsonObject();

        assertThat(proposal.get("wall").getAsString()).isEqualTo("W3");
        assertThat(proposal.has("opening")).isFalse();
        assertThat(proposal.get("dimension").getAsString()).isEqualTo("offset");
        assertThat(proposal.get("from").getAsBigDecimal()).isEqualByComparingTo("3683");
        assertThat(proposal.getAsJsonArray("profile")).hasSize(25);
        assertThat(cuts(project)).isEqualTo(fit.getAsJsonObject("after").get("cuts").getAsInt())
                .isLessThan(fit.getAsJsonObject("before").get("cuts").getAsInt());
    }

    @Test
    void withoutApplyNothingIsWritten() throws IOException {
        Path project = screen();
        byte[] before = Files.readAllBytes(project);
        CommandRun.of("fit", project);

        assertThat(Files.readAllBytes(project)).isEqualTo(before);
    }

    @Test
    void textIsForABuilder() throws IOException {
        CommandRun run = CommandRun.of("fit", screen(), "--budget", "3 in", "--minutes-per-cut", "4", "--cost-per-cut",
                "1.50 USD");

        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("Proposed changes", "wall W1, N1: move", "3'-9\"", "As planned:",
                "With all changes", "minutes", "USD");
    }

    @Test
    void tolerancesThatAreMissingAreAskedFor() throws IOException {
        Schedules schedules = Schedules.twoRooms(folder);
        schedules.write("openings.csv", OPENINGS.replace("±3", "0"));
        schedules.write("walls.csv", WALLS);
        assertThat(schedules.make().status()).isZero();

        assertThat(CommandRun.of("fit", schedules.project()).out()).contains("Nothing may change", "--wall-tolerance");
    }

    @Test
    void badOptionsAreRefused() throws IOException {
        Path project = screen();
        assertRefused(CommandRun.of("fit", project, "--wall", "W9"), "W9");
        assertRefused(CommandRun.of("fit", project, "--budget", "-2 in"), "--budget");
        assertRefused(CommandRun.of("fit", project, "--budget", "much"), "--budget");
        assertRefused(CommandRun.of("fit", project, "--cost-per-cut", "1 USD"), "--minutes-per-cut");
        assertRefused(CommandRun.of("fit", project, "--minutes-per-cut", "-1"), "--minutes-per-cut");
        assertRefused(CommandRun.of("fit", project, "--minutes-per-cut", "4", "--cost-per-cut", "2 shells"),
                "--cost-per-cut");
    }

    private static void assertRefused(CommandRun run, String named) {
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(named);
    }
}
