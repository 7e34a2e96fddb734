package org.coursewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

class LayCommandTest {

    @TempDir
    Path folder;

    private Schedules schedules;

    @BeforeEach
    void setUp() throws IOException {
        schedules = Schedules.twoRooms(folder);
        assertThat(schedules.make().status()).isZero();
    }

    @Test
    void everyRunOfTwoRoomsAddsUp() {
        CommandRun run = CommandRun.of("lay", schedules.project(), "--format", "json");
        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(LayRecount.of(run.json()).faults()).isEmpty();
    }

    @Test
    void secondCourseOfAWallIsAsWorkedByHand() {
        // 12'-10" between outer faces: W2 runs through with 10 wholes and 9 joints of (154 - 140)/9 in = 39.511111 mm
        // or, where it stops at both corners, 134 in = 9 wholes and 10 joints of 0.8 in, too wide. So it takes turns.
        JsonObject wall = wall(CommandRun.of("lay", schedules.project(), "--wall", "W2", "--format", "json"));
        assertThat(wall.get("length").getAsBigDecimal()).isEqualByComparingTo("3911.6");
        JsonObject course = wall.getAsJsonArray("courses").get(1).getAsJsonObject();
        assertThat(course.get("bottom").getAsBigDecimal()).isEqualByComparingTo("114.3");
        assertThat(course.get("height").getAsBigDecimal()).isEqualByComparingTo("114.3");
        assertThat(wall.get("cutPieces").getAsInt()).isZero();
        assertThat(wall.get("whole").getAsInt()).isEqualTo(200);
    }

    @Test
    void oneWallIsShownAloneWithItsOwnTotals() {
        JsonObject json = CommandRun.of("lay", schedules.project(), "--wall", "w2", "--format", "json").json();
        assertThat(json.getAsJsonArray("walls")).hasSize(1);
        assertThat(json.getAsJsonObject("totals").get("whole").getAsInt()).isEqualTo(200);
    }

    @Test
    void unknownWallIsRefusedWithTheWallsThereAre() {
        CommandRun run = CommandRun.of("lay", schedules.project(), "--wall", "W9");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isEqualTo("--wall: There is no wall \"W9\". Walls are W1, W2, W3, W4, W5.\n");
    }

    @Test
    void textHasOneLineForEachWallAndTotals() {
        List<String> lines = CommandRun.of("lay", schedules.project()).out().lines().toList();
        assertThat(lines.get(0)).startsWith("wall").endsWith("proven");
        assertThat(lines.subList(1, 6)).extracting(line -> line.substring(0, 2)).containsExactly("W1", "W2", "W3", "W4",
                "W5");
        assertThat(lines.get(6)).startsWith("total");
        assertThat(lines.get(lines.size() - 2)).startsWith("rooms: 5 walls, ");
    }

    @Test
    void everyCutIsExplainedAsTextAndAsJson() {
        String text = CommandRun.of("lay", schedules.project()).out();
        int explained = text.lines().filter(line -> line.matches(" +\\d+ cut in courses? .+ .+\\."))
                .mapToInt(line -> Integer.parseInt(line.strip().split(" ")[0])).sum();
        JsonObject building = CommandRun.of("lay", schedules.project(), "--format", "json").json().getAsJsonObject();

        assertThat(explained).isPositive()
                .isEqualTo(building.getAsJsonObject("totals").get("cut").getAsInt());
        assertThat(LayRecount.of(building).faults()).isEmpty();
    }

    @Test
    void textOfOneWallShowsItsCourses() {
        assertThat(CommandRun.of("lay", schedules.project(), "--wall", "W5").out())
                .startsWith("Wall W5, 11'-2\" long, courses from the bottom up").contains("\n 20 at 7'-1 1/2\"\n");
    }

    @Test
    void runThatCannotBeFilledIsListedAndTheStatusSaysSo() throws IOException {
        // a pier of 2 in is shorter than the shortest piece
        schedules.write("openings.csv", Schedules.OPENINGS + "N2,W1,window,7'-2\",36,36,45,none,,\n");
        assertThat(schedules.make("--force").status()).isZero();
        CommandRun run = CommandRun.of("lay", schedules.project(), "--wall", "W1", "--format", "json");
        assertThat(run.status()).isEqualTo(1);
        JsonObject unfillable = wall(run).getAsJsonArray("unfillable").get(0).getAsJsonObject();
        assertThat(unfillable.get("from").getAsBigDecimal()).isEqualByComparingTo("2133.6");
        assertThat(unfillable.get("to").getAsBigDecimal()).isEqualByComparingTo("2184.4");
        assertThat(unfillable.get("reason").getAsString()).isNotBlank();
        assertThat(LayRecount.of(run.json()).faults()).isEmpty();
    }

    @Test
    void rakedEndsAreFacesMarkedAsRaked() throws IOException {
        schedules.write("walls.csv", "mark,from_x,from_y,to_x,to_y,unit,height,gable\nG1,0,0,20',0,14x10x4,18,45\n");
        schedules.write("openings.csv", "mark,wall,kind,offset,width,height\n");
        assertThat(schedules.make("--force").status()).isZero();
        JsonObject wall = wall(CommandRun.of("lay", schedules.project(), "--format", "json"));
        JsonObject run = wall.getAsJsonArray("courses").get(6).getAsJsonObject().getAsJsonArray("runs").get(0)
                .getAsJsonObject();
        assertThat(run.get("startsWith").getAsString()).isEqualTo("face");
        assertThat(run.get("startRaked").getAsBoolean()).isTrue();
        assertThat(run.get("endRaked").getAsBoolean()).isTrue();
    }

    @Test
    void projectThatContradictsItselfIsNotLaidInPart() throws IOException {
        String text = Files.readString(schedules.project());
        Files.writeString(schedules.project(), text.replace("toX=\"6096 mm\" unitType", "unitType"));
        CommandRun run = CommandRun.of("lay", schedules.project());
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("rooms.coursewright: invalid: wall W1: ");
    }

    private static JsonObject wall(CommandRun run) {
        JsonElement wall = run.json().getAsJsonArray("walls").get(0);
        return wall.getAsJsonObject();
    }
}
