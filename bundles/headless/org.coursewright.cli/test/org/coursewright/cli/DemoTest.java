package org.coursewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

/** The demo building: that its project is what its schedules give, and that its layout adds up. */
class DemoTest {

    private static final Path DEMO = demo();

    @TempDir
    Path folder;

    @Test
    void projectIsWhatItsSchedulesGive() throws Exception {
        Path made = folder.resolve("clinic.coursewright");
        CommandRun run = CommandRun.of("new", made, "--walls", DEMO.resolve("walls.csv"), "--openings",
                DEMO.resolve("openings.csv"), "--units", DEMO.resolve("units.csv"), "--estimate",
                DEMO.resolve("estimate"), "--name", "Clinic in high desert");
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        assertThat(Files.readString(made)).isEqualTo(Files.readString(DEMO.resolve("clinic.coursewright")));
    }

    @Test
    void layoutAddsUpRunByRun() {
        CommandRun run = CommandRun.of("lay", DEMO.resolve("clinic.coursewright"), "--format", "json");
        assertThat(run.status()).isZero();
        LayRecount recount = LayRecount.of(run.json());
        assertThat(recount.faults()).isEmpty();
        assertThat(recount.runs()).isGreaterThan(300);
        assertThat(run.out()).doesNotContainPattern("\\d[eE][+-]?\\d");
    }

    @Test
    void mostUnitsAreWhole() {
        JsonObject totals = CommandRun.of("lay", DEMO.resolve("clinic.coursewright"), "--format", "json").json()
                .getAsJsonObject("totals");
        assertThat(totals.get("cut").getAsInt()).isPositive().isLessThan(totals.get("whole").getAsInt() / 20);
    }

    @Test
    void checkFindsNothingThatStopsTheJob() {
        CommandRun run = CommandRun.of("check", DEMO.resolve("clinic.coursewright"));
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("P3 ends against W4 and is tied to it");
    }

    @Test
    void describeTellsWhatIsInIt() {
        assertThat(CommandRun.of("describe", DEMO.resolve("clinic.coursewright")).out()).startsWith("""
                Project Clinic in high desert
                14 walls, 12 openings, 1 storey, 1 unit type
                """).contains(
                "  Wall W2: (38'-8\", 0\") to (38'-8\", 25'-2 1/2\"), 8'-3\" high, rising to 11'-7\", B14 in header bond",
                "    Window N1: 3'-8\" wide, 3'-9\" high, 5'-4 3/4\" from the start, sill 3'-0\"",
                "3'-9\" high, B14 in stretcher bond, may size ±3\"");
    }

    private static Path demo() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(folder.resolve("releng/demo"))) {
            folder = folder.getParent();
        }
        return folder.resolve("releng/demo");
    }
}
