package org.coursewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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

class PriceCommandTest {

    private static final Path DEMO = demo();
    private static final String RATES = """
            resource,kind,price,currency,unit,as_of
            14 x 10 x 4 in,material,1.50,USD,H87,2026-01-31
            mortar of first courses,material,300,USD,MTQ,2026-01-31
            mortar of other courses,material,250,USD,MTQ,2026-01-31
            lintel,material,500,USD,MTQ,2026-01-31
            scaffold,plant,6,USD,MTK,2026-01-31
            """;

    private static CommandRun priced;

    @TempDir
    Path folder;

    @BeforeAll
    static void priceTheDemoOnce() {
        priced = CommandRun.of("price", DEMO, "--format", "json");
    }

    /**
     * By hand, see docs/price.md: the first courses of the screen walls C1 (173 1/2 in, 12 joints) and C2 (245 1/2 in, 19
     * joints) take 2715 in³ net, with a quarter of waste 0.0556136 m³; a round of 1 cement, 1/2 lime and 4 1/2 sand yields
     * 3.874556 m³ and has 320.5 kg of lime, so that with 2 % of waste 0.206896 bags of 50 lb are needed.
     */
    @Test
    void limeOfTheScreenWallsIsAsWorkedByHand() {
        JsonObject lime = stream(
                priced.json().getAsJsonArray("scenarios").get(0).getAsJsonObject().getAsJsonArray("lines"))
                .map(JsonElement::getAsJsonObject).filter(line -> line.get("resource").getAsString().equals("lime"))
                .filter(line -> line.get("element").getAsString().equals("G2040")).findFirst().orElseThrow();
        assertThat(lime.get("quantity").getAsBigDecimal()).isCloseTo(new BigDecimal("0.206895722730"), within(
                new BigDecimal("1e-10")));
    }

    /** What is written adds up, to the last digit, whichever way it is grouped. */
    @Test
    void demoAddsUpByLineElementAndTrade() {
        CommandRun run = priced;
        assertThat(run.status()).isZero();
        assertThat(run.json().get("schema").getAsString()).isEqualTo("coursewright.price/1");
        assertThat(run.json().getAsJsonArray("makeOrCut")).isNotEmpty();
        JsonObject price = run.json().getAsJsonArray("scenarios").get(0).getAsJsonObject();
        BigDecimal total = price.getAsJsonObject("cost").get("total").getAsBigDecimal();
        assertThat(total).isPositive();
        assertThat(sum(price.getAsJsonArray("byElement"))).isEqualByComparingTo(total);
        assertThat(sum(price.getAsJsonArray("byTrade"))).isEqualByComparingTo(total);
        assertThat(stream(price.getAsJsonArray("lines")).map(line -> line.getAsJsonObject().getAsJsonObject("price")
                .getAsJsonObject("cost").get("total").getAsBigDecimal()).reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo(total);
        JsonObject range = price.getAsJsonObject("range");
        assertThat(Stream.of("p10", "p50", "p80", "p90").map(name -> range.get(name).getAsDouble()).toList())
                .isSorted();
        assertThat(stream(price.getAsJsonArray("lines"))).allSatisfy(line -> assertThat(line.getAsJsonObject()
                .getAsJsonArray("elements")).isNotEmpty());
    }

    @Test
    void linesAreTracedToElementsFormulaAndRate() throws IOException {
        Path project = rooms();
        assertThat(CommandRun.of("price", project, "--show-me", "1").out()).startsWith("1 14 x 10 x 4 in, units: ")
                .contains(
                        "formula  units.share = ", "input    ordered = ", "from     W1, W2, W3, W4, W5",
                        "rate     1.50 USD for one pc of material, 2026-01-31", "× 1.50 USD = ");
    }

    @Test
    void badRateIsToldOnItsLineAndTheOthersArePriced() throws IOException {
        Path project = rooms();
        String bad = Files.readString(project).replace("price=\"6 USD\"", "price=\"-6 USD\"");
        Files.writeString(project, bad);
        CommandRun run = CommandRun.of("price", project);
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out()).contains("Some lines have no price: the total is too low.",
                "error: rate scaffold: Its price is -6 USD. It must not be negative. [rate.negative]",
                "[price.negative-rate]");
        assertThat(CommandRun.of("lay", project).status()).as("laying needs no rates").isZero();
    }

    @Test
    void scenariosStandSideBySide() throws IOException {
        Path project = rooms();
        CommandRun run = CommandRun.of("price", project, "--compare");
        assertThat(run.status()).isEqualTo(0);
        assertThat(run.out()).contains("as planned", "headers", "above the first", "P80", "W1 and W3 as headers");
        JsonArray both = CommandRun.of("price", project, "--compare", "--format", "json").json().getAsJsonArray(
                "scenarios");
        assertThat(both).hasSize(2);
        assertThat(both.get(1).getAsJsonObject().get("difference").getAsBigDecimal()).isEqualByComparingTo(total(both
                .get(1)).subtract(total(both.get(0))));
        assertThat(total(CommandRun.of("price", project, "--scenario", "headers", "--format", "json").json()
                .getAsJsonArray("scenarios").get(0))).isEqualByComparingTo(total(both.get(1)));
    }

    @ParameterizedTest
    @CsvSource({"--scenario,none,There is no scenario", "--show-me,999,There is no line", "--out,a.txt,ends in none of",
            "--format,xml,neither text nor json"})
    void badArgumentIsRefused(String option, String value, String message) throws IOException {
        CommandRun run = CommandRun.of("price", rooms(), option, value);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(option, message);
    }

    @Test
    void resultIsWrittenForSpreadsheetsAndPaper() throws IOException {
        Path project = rooms();
        for (String name : List.of("p.csv", "p.xlsx", "p.pdf")) {
            assertThat(CommandRun.of("price", project, "--out", folder.resolve(name)).status()).isZero();
            assertThat(Files.size(folder.resolve(name))).isGreaterThan(200);
        }
        assertThat(Files.readString(folder.resolve("p.csv"))).startsWith(
                "line,resource,work,element,trade,quantity,unit,rate,as of,direct,total\r\n1,14 x 10 x 4 in,units,B2010,masonry,");
        assertThat(CommandRun.of("takeoff", project, "--out", folder.resolve("t.xlsx")).status()).isZero();
    }

    @Test
    void priceListReplacesTheRatesOrChangesNothing() throws IOException {
        Path project = rooms();
        Path list = Files.writeString(folder.resolve("list.csv"), RATES.replace("1.50", "2.50"));
        assertThat(CommandRun.of("rates", project, "--from", list).status()).isZero();
        assertThat(Files.readString(project)).contains("price=\"2.50 USD\"").doesNotContain("price=\"1.50 USD\"");
        String before = Files.readString(project);
        Files.writeString(list, RATES.replace("1.50", "-2"));
        CommandRun refused = CommandRun.of("rates", project, "--from", list);
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("list.csv, line 2, column price: -2 is negative");
        assertThat(Files.readString(project)).isEqualTo(before);
    }

    @Test
    void mixesOfTheDemoAreWorkedOut() {
        CommandRun run = CommandRun.of("mixes", DEMO);
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("Mix earth: mortar of other courses", "too coarse", "One block B14",
                "wear gloves");
        JsonObject first = CommandRun.of("mixes", DEMO, "--format", "json").json().getAsJsonArray("mixes").get(0)
                .getAsJsonObject();
        assertThat(first.getAsJsonObject("block").get("ofSoil").getAsBigDecimal()).isEqualByComparingTo("0.06");
    }

    private Path rooms() throws IOException {
        Schedules schedules = Schedules.twoRooms(folder);
        Path estimate = Files.createDirectories(folder.resolve("estimate"));
        Files.writeString(estimate.resolve("rates.csv"), RATES);
        Files.writeString(estimate.resolve("settings.csv"), "setting,value\ncurrency,USD\n");
        Files.writeString(estimate.resolve("scenarios.csv"),
                "mark,changes,note\nheaders,W1 W3: header,W1 and W3 as headers\n");
        assertThat(schedules.make("--estimate", estimate).status()).isZero();
        return schedules.project();
    }

    private static BigDecimal total(JsonElement scenario) {
        return scenario.getAsJsonObject().getAsJsonObject("cost").get("total").getAsBigDecimal();
    }

    private static BigDecimal sum(JsonArray groups) {
        return stream(groups).map(group -> group.getAsJsonObject().get("total").getAsBigDecimal()).reduce(
                BigDecimal.ZERO, BigDecimal::add);
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
