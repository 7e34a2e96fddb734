package org.coursewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** The sheet in docs on which a wall of the demo is taken off by hand agrees with the command, line by line. */
class HandSheetTest {

    private static final BigDecimal LAST_DIGIT = new BigDecimal("2e-12");

    @Test
    void everyLineWorkedByHandIsWhatTheCommandSays() throws IOException {
        Path root = root();
        List<ByHand> sheet = Files.readAllLines(root.resolve("docs/takeoff-by-hand.csv")).stream().skip(1).map(
                ByHand::of).toList();
        JsonArray lines = CommandRun.of("takeoff", root.resolve("releng/demo/clinic.coursewright"), "--wall", "C1",
                "--format", "json").json().getAsJsonArray("lines");
        assertThat(sheet).hasSize(9).hasSameSizeAs(lines);
        for (int i = 0; i < lines.size(); i++) {
            JsonObject line = lines.get(i).getAsJsonObject();
            ByHand byHand = sheet.get(i);
            assertThat(List.of(byHand.item(), byHand.formula(), byHand.unit())).as("line %d", i + 1)
                    .containsExactly(line.get("item").getAsString(), line.get("formula").getAsString(), line.get("unit")
                            .getAsString());
            assertThat(line.get("quantity").getAsBigDecimal()).as("line %d: %s", i + 1, byHand.working()).isCloseTo(
                    new BigDecimal(byHand.result()), within(LAST_DIGIT));
        }
    }

    /** A row: line, item, formula, working, result, unit; items and workings are in quotation marks. */
    private record ByHand(String item, String formula, String working, String result, String unit) {

        private static final Pattern ROW = Pattern.compile("\\d+,\"([^\"]*)\",([^,\"]*),\"([^\"]*)\",([^,]*),([^,]*)");

        static ByHand of(String row) {
            Matcher cells = ROW.matcher(row);
            assertThat(cells.matches()).as(row).isTrue();
            return new ByHand(cells.group(1), cells.group(2), cells.group(3), cells.group(4), cells.group(5));
        }
    }

    private static Path root() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(folder.resolve("releng/demo"))) {
            folder = folder.getParent();
        }
        return folder;
    }
}
