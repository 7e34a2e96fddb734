package org.coursewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

/** The take-off of the demo, counted again from its layout. */
class TakeoffCommandTest {

    private static final Path DEMO = demo();
    /** Decimals of millimetres in the layout and of cubic metres in the take-off are exact or rounded far below this. */
    private static final double TOLERANCE = 1e-9;

    private static JsonObject layout;
    private static JsonObject takeoff;

    @TempDir
    Path folder;

    @BeforeAll
    static void takeOffTheDemoOnce() {
        layout = CommandRun.of("lay", DEMO, "--format", "json").json();
        CommandRun run = CommandRun.of("takeoff", DEMO, "--format", "json");
        assertThat(run.status()).isZero();
        takeoff = run.json();
    }

    @Test
    void mortarOfEveryCourseIsThatOfItsLayout() {
        JsonArray laid = layout.getAsJsonArray("walls");
        JsonArray taken = takeoff.getAsJsonArray("walls");
        assertThat(taken).hasSameSizeAs(laid);
        for (int wall = 0; wall < laid.size(); wall++) {
            JsonObject of = taken.get(wall).getAsJsonObject();
            JsonArray courses = laid.get(wall).getAsJsonObject().getAsJsonArray("courses");
            assertThat(of.getAsJsonArray("courses")).isNotEmpty().hasSameSizeAs(courses);
            for (int course = 0; course < courses.size(); course++) {
                assertThat(number(of.getAsJsonArray("courses").get(course), "net")).as("%s/%d", of.get("mark"), course
                        + 1).isCloseTo(mortar(courses.get(course), thickness(of)), within(TOLERANCE));
            }
        }
    }

    /** Units of 14 × 10 × 4 in: the bed runs under all of a run, head joints are what its pieces leave of it. */
    private static double mortar(JsonElement course, double thickness) {
        double volume = 0;
        for (JsonElement each : course.getAsJsonObject().getAsJsonArray("runs")) {
            double run = number(each, "to") - number(each, "from");
            double pieces = stream(each.getAsJsonObject().getAsJsonArray("pieces"))
                    .mapToDouble(JsonElement::getAsDouble).sum();
            volume += (run * (number(course, "height") - 101.6) + (run - pieces) * 101.6) * thickness / 1e9;
        }
        return volume;
    }

    private static double thickness(JsonObject wall) {
        return wall.get("bond").getAsString().equals("header") ? 355.6 : 254;
    }

    @Test
    void linesAreTheSumOfTheWalls() {
        JsonObject totals = layout.getAsJsonObject("totals");
        for (String kind : new String[]{"whole", "special", "cut"}) {
            assertThat(sum(takeoff.getAsJsonArray("walls"), kind)).isEqualTo(number(totals, kind));
            assertThat(sum(takeoff.getAsJsonArray("units"), kind)).isEqualTo(number(totals, kind));
        }
        double net = stream(takeoff.getAsJsonArray("walls"))
                .mapToDouble(wall -> sum(wall.getAsJsonObject().getAsJsonArray("courses"), "net")).sum();
        assertThat(net).isCloseTo(lines(takeoff, "mortar.net"), within(TOLERANCE));
        assertThat(stream(takeoff.getAsJsonArray("lines")).map(JsonElement::getAsJsonObject)
                .filter(line -> line.get("formula").getAsString().equals("mortar.ordered"))).hasSize(2).allSatisfy(
                        line -> assertThat(number(line, "quantity")).isCloseTo(input(line, "net") * (1 + input(line,
                                "waste")), within(TOLERANCE)));
        assertThat(sum(takeoff.getAsJsonArray("walls"), "face")).isCloseTo(lines(takeoff, "face.net"),
                within(TOLERANCE));
        assertThat(lines(takeoff, "lintels.count")).isEqualTo(12);
    }

    @Test
    void jsonSaysThatItIsAnEstimateAndOnWhatItRests() {
        assertThat(takeoff.get("schema").getAsString()).isEqualTo("coursewright.takeoff/1");
        assertThat(takeoff.get("estimate").getAsBoolean()).isTrue();
        assertThat(takeoff.getAsJsonArray("assumptions")).isNotEmpty();
        assertThat(stream(takeoff.getAsJsonArray("lines")).map(JsonElement::getAsJsonObject)).isNotEmpty()
                .allSatisfy(line -> assertThat(line.get("source").getAsString()).isNotBlank());
    }

    @Test
    void textFitsOnOneScreenAndPrintsAssumptionsAndCautions() {
        CommandRun run = CommandRun.of("takeoff", DEMO);
        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out().lines()).hasSizeLessThanOrEqualTo(40);
        assertThat(run.out()).startsWith("Estimate for Clinic in high desert, walls: 14\n").contains("It assumes:",
                "Waste is 20 % of mortar earth", "saw kerf 3/16\"", "silica", "structural designer");
    }

    @Test
    void lineIsShownWithFormulaSourceAndInputs() throws IOException {
        assertThat(CommandRun.of("takeoff", DEMO, "--show-me", "5").out()).startsWith("B14 stretcher, whole to order: ")
                .contains("formula  units.ordered = ⌈(whole + cutting) × (1 + breakage)⌉",
                        "source   common practice, no source", "input    breakage = 0.04", "from     W1, ");
        assertThat(CommandRun.of("takeoff", rooms(), "--show-me", "w1/1").out())
                .startsWith("W1/1, mortar in bed joints: ").contains("input    bedJoint = 1/2\"");
    }

    @Test
    void oneWallIsTakenOffAlone() throws IOException {
        JsonArray walls = CommandRun.of("takeoff", rooms(), "--wall", "w2", "--format", "json").json()
                .getAsJsonArray("walls");
        assertThat(walls).hasSize(1);
        assertThat(walls.get(0).getAsJsonObject().get("mark").getAsString()).isEqualTo("W2");
    }

    @ParameterizedTest
    @CsvSource({"--wall,W99,There is no wall", "--show-me,0,There is no line \"0\"",
            "--show-me,W1/999,There is no line", "--show-me,x,There is no line", "--format,xml,neither text nor json"})
    void badArgumentIsRefused(String option, String value, String message) throws IOException {
        CommandRun run = CommandRun.of("takeoff", rooms(), option, value);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(option, message);
    }

    @Test
    void shownLineAsJsonAndMissingFileAreRefused() {
        assertThat(CommandRun.of("takeoff", DEMO, "--show-me", "1", "--format", "json").status()).isEqualTo(2);
        assertThat(CommandRun.of("takeoff", DEMO.resolveSibling("none.coursewright")).status()).isEqualTo(2);
        assertThat(CommandRun.of("takeoff").status()).isEqualTo(2);
    }

    private Path rooms() throws IOException {
        Schedules schedules = Schedules.twoRooms(folder);
        assertThat(schedules.make().status()).isZero();
        return schedules.project();
    }

    private static double lines(JsonObject json, String formula) {
        return stream(json.getAsJsonArray("lines")).map(JsonElement::getAsJsonObject)
                .filter(line -> line.get("formula").getAsString().equals(formula))
                .mapToDouble(line -> number(line, "quantity")).sum();
    }

    private static double input(JsonObject line, String symbol) {
        return stream(line.getAsJsonArray("inputs")).filter(input -> input.getAsJsonObject().get("symbol").getAsString()
                .equals(symbol)).mapToDouble(input -> number(input, "quantity")).findFirst().orElseThrow();
    }

    private static double sum(JsonArray elements, String member) {
        return stream(elements).mapToDouble(element -> number(element, member)).sum();
    }

    private static double number(JsonElement of, String member) {
        return of.getAsJsonObject().get(member).getAsDouble();
    }

    private static Stream<JsonElement> stream(JsonArray array) {
        return StreamSupport.stream(array.spliterator(), false);
    }

    private static Path demo() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(folder.resolve("releng/demo"))) {
            folder = folder.getParent();
        }
        return folder.resolve("releng/demo/clinic.coursewright");
    }
}
