package org.coursewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

/** The demo building, its window N2 allowed to move: what {@code fit} promises is what {@code lay} counts afterwards. */
class DemoFitTest {

    @TempDir
    Path folder;

    @Test
    void appliedProposalsGiveExactlyThePromisedCount() throws IOException {
        Path clinic = clinic();
        CommandRun run = CommandRun.of("fit", clinic, "--wall", "W1", "--budget", "3 in", "--apply", "--format",
                "json");
        JsonObject fit = run.json();
        JsonObject before = fit.getAsJsonObject("before");
        JsonObject after = fit.getAsJsonObject("after");

        assertThat(run.status()).isZero();
        assertThat(fit.getAsJsonArray("proposals")).isNotEmpty();
        assertThat(weight(after)).isLessThan(weight(before));
        assertThat(fit.getAsJsonObject("saved").get("minutes").getAsBigDecimal()).isPositive();
        assertThat(fit.getAsJsonObject("saved").get("cost").getAsBigDecimal()).isPositive();
        assertThat(CommandRun.of("lay", clinic, "--format", "json").json().getAsJsonObject("totals").get("cut")
                .getAsInt()).isEqualTo(after.get("cuts").getAsInt());
    }

    /** A short lap weighs more than any number of cuts. */
    private static int weight(JsonObject building) {
        return building.get("lapViolations").getAsInt() * 10_000 + building.get("cuts").getAsInt();
    }

    /** A copy in which all other openings stay where they are, which spares time. */
    private Path clinic() throws IOException {
        String project = Files.readString(demo().resolve("clinic.coursewright"));
        String only = project.lines()
                .map(line -> line.contains("mark=\"N2\"")
                        ? line.replaceAll(" sizeTolerance=\"[^\"]*\"", "")
                        : line.replaceAll(" (move|size)Tolerance=\"[^\"]*\"", ""))
                .collect(Collectors.joining("\n", "", "\n"));
        return Files.writeString(folder.resolve("clinic.coursewright"), only);
    }

    private static Path demo() {
        Path at = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(at.resolve("releng/demo"))) {
            at = at.getParent();
        }
        return at.resolve("releng/demo");
    }
}
