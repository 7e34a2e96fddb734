package org.coursewright.core.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;

import org.coursewright.model.project.Project;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is in a file, loading gives a whole project or one exception that names the place and the way out. */
class HostileFileTest {

    private static final String GOOD = """
            <?xml version="1.0" encoding="UTF-8"?>
            <project:Project xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI"\
             xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xmlns:building="http://coursewright.org/project/1/building"\
             xmlns:project="http://coursewright.org/project/1" xmi:id="_p" name="Store">
              <catalogue xmi:id="_c">
                <unitTypes xmi:id="_u" mark="B14" length="355.6 mm" source="bought"/>
              </catalogue>
              <building xmi:id="_b">
                <storeys xmi:id="_s" mark="G">
                  <walls xmi:id="_w" mark="W1" toX="2540 mm" unitType="_u">
                    <openings xmi:id="_o" mark="D1"/>
                  </walls>
                </storeys>
                <gradeBeams xmi:id="_g" mark="GB1" walls="_w"/>
              </building>
            </project:Project>
            """;

    private final ProjectStore store = new ProjectStore();

    @TempDir
    private Path folder;
    private Path file;

    @BeforeEach
    void nameFile() {
        file = folder.resolve("store.coursewright");
    }

    @Test
    void theGoodFileLoads() throws IOException, ProjectFileException {
        Files.writeString(file, GOOD);
        assertThat(store.load(file).getName()).isEqualTo("Store");
    }

    static Stream<Arguments> faults() {
        return Stream.of(arguments("", "empty", 0), arguments(" \n\n", "empty", 0),
                arguments(GOOD.substring(0, GOOD.length() / 2), "ends too early", 0),
                arguments(GOOD.replace("</project:Project>\n", ""), "ends too early", 0),
                arguments("mark,from_x,from_y\nW1,0,0\n", "not well-formed XML", 1),
                arguments(GOOD.replace("<openings", "<openings mark=\"D2\""), "not well-formed XML", 9),
                arguments(GOOD.replace("name=\"Store\"", "name=\"St\u0000ore\""), "NUL", 2),
                arguments(GOOD.replace("encoding=\"UTF-8\"", "encoding=\"ISO-8859-1\""), "encoded as ISO-8859-1", 1),
                arguments(GOOD.replace("<project:Project", "<!DOCTYPE x [<!ENTITY a \"b\">]><project:Project"),
                        "document types and entities are not allowed", 2),
                arguments(
                        GOOD.replace("<project:Project",
                                "<!DOCTYPE x SYSTEM \"file:///etc/hostname\"><project:Project"),
                        "document types and entities are not allowed", 2),
                arguments(GOOD.replace("name=\"Store\"", "name=\"&a;\""), "not well-formed XML", 2),
                arguments(GOOD.replace("project/1\" xmi:id", "project/2\" xmi:id"), "newer version of Coursewright", 0),
                arguments(GOOD.replace("project/1\" xmi:id", "project/0\" xmi:id"), "cannot convert", 0),
                arguments(GOOD.replace("http://coursewright.org/project/1\"", "urn:other\""),
                        "not a Coursewright project",
                        2),
                arguments("<html><body/></html>", "not a Coursewright project", 1),
                arguments(GOOD.replace("project:Project", "project:Site"), "root of a project file is <Project>", 2),
                arguments(GOOD.replace("toX=\"2540 mm\"", "toX=\"long\""), "the toX of Wall W1 cannot be \"long\"", 8),
                arguments(GOOD.replace("toX=\"2540 mm\"", "toX=\"2540\""), "write millimetres with the unit", 8),
                arguments(GOOD.replace("\"bought\"", "\"stolen\""), "write one of bought, ", 4),
                arguments(GOOD.replace("mark=\"W1\"", "mork=\"W1\""), "has no \"mork\"", 8),
                arguments(GOOD.replace("openings", "holes"), "has no \"holes\"", 9),
                arguments(GOOD.replace("<openings", "<openings xsi:type=\"building:Hole\""), "\"Hole\"", 9),
                arguments(GOOD.replace("<openings", "<openings xsi:type=\"building:Storey\""), "", 9),
                arguments(GOOD.replace("<openings", "<openings xsi:type=\"building:Pin\""), "", 9),
                arguments(GOOD.replace("<openings", "<openings xsi:type=\"none:Opening\""), "", 9),
                arguments(GOOD.replace("unitType=\"_u\"", "unitType=\"_x\""), "no element \"_x\"", 0),
                arguments(GOOD.replace("unitType=\"_u\"", "unitType=\"_s\""), "", 0),
                arguments(GOOD.replace("walls=\"_w\"", "walls=\"_w _u\""), "", 0),
                arguments(GOOD.replace("unitType=\"_u\"", "unitType=\"../other.coursewright#_u\""),
                        "other.coursewright",
                        8),
                arguments(GOOD.replace("unitType=\"_u\"", "unitType=\"//@catalogue/@unitTypes.7\""), "unitTypes.7", 0),
                arguments(GOOD.replace("<openings xmi:id=\"_o\" mark=\"D1\"/>",
                        "<unitType href=\"../other.coursewright#_u\"/>"), "refers to another file", 9),
                arguments(GOOD.replace("<openings", "<openings xsi:schemaLocation=\"urn:a file:///etc/hostname\""),
                        "refers to another file", 9),
                arguments(GOOD.replace("xmi:id=\"_o\"", "xmi:id=\"_w\""), "same xmi:id \"_w\" as an element in line 8",
                        9),
                arguments(GOOD.replace("  <catalogue", "  stray <catalogue"), "the text \"stray\" is out of place", 3),
                arguments(GOOD.replace("</catalogue>", "</catalogue>\n  <catalogue xmi:id=\"_c2\"/>"), "given twice",
                        6),
                arguments(GOOD.replace("<openings xmi:id=\"_o\" mark=\"D1\"/>",
                        "<a>".repeat(100_000) + "</a>".repeat(100_000)), "nested more than 64 deep", 9));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void faultIsNamedWithItsPlaceAndTheWayOut(String content, String words, int line) throws IOException {
        Files.writeString(file, content);
        ProjectFileException refusal = refusal();
        assertThat(refusal).hasMessageContaining(words);
        if (line > 0) {
            assertThat(refusal.line()).hasValue(line);
            assertThat(refusal).hasMessageStartingWith(file + ", line " + line);
        }
    }

    private ProjectFileException refusal() {
        ProjectFileException refusal = catchThrowableOfType(ProjectFileException.class, () -> store.load(file));
        assertThat(refusal).as("refused").isNotNull();
        assertThat(refusal.getMessage()).startsWith(file.toString()).endsWith(".").doesNotContain("Exception")
                .doesNotContain("org.eclipse").doesNotContain("\n").hasSizeLessThan(500);
        return refusal;
    }

    @Test
    void otherEncodingIsNamed() throws IOException {
        Files.write(file, GOOD.getBytes(StandardCharsets.UTF_16));
        assertThat(refusal()).hasMessageContaining("UTF-16");
        Files.write(file, GOOD.replace("Store", "Gr\u00F6\u00DFe").getBytes(StandardCharsets.ISO_8859_1));
        assertThat(refusal()).hasMessageContaining("not encoded as UTF-8");
        assertThat(refusal().line()).hasValue(2);
    }

    @Test
    void byteOrderMarkIsPassedOver() throws IOException, ProjectFileException {
        Files.writeString(file, "\uFEFF" + GOOD);
        assertThat(store.load(file).getName()).isEqualTo("Store");
    }

    @Test
    void tooLargeAFileIsNotRead() throws IOException {
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(ProjectStore.LARGEST_FILE + 1);
        }
        assertThat(refusal()).hasMessageContaining("at most 16 MB");
    }

    @Test
    void floodOfFaultsIsGivenUp() throws IOException {
        Files.writeString(file, GOOD.replace("<openings xmi:id=\"_o\" mark=\"D1\"/>", "<a/>\n".repeat(90_000)));
        assertThat(refusal()).hasMessageContaining("Wall W1 has no \"a\"").hasMessageContaining("99 more faults");
        assertThat(refusal().line()).hasValue(9);
    }

    @Test
    void floodOfElementsIsGivenUp() throws IOException {
        Files.writeString(file, GOOD.replace("<openings xmi:id=\"_o\" mark=\"D1\"/>", "<openings/>\n".repeat(100_000)));
        assertThat(refusal()).hasMessageContaining("more than 100000 elements");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1E999999999 mm", "1E-999999999 mm", "9223372036854775807 mm", "mm", "NaN mm"})
    void lengthBeyondAllMeasureIsRefused(String length) throws IOException {
        Files.writeString(file, GOOD.replace("2540 mm", length));
        assertThat(refusal()).hasMessageContaining("the toX of Wall W1 cannot be");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1E999999999 MTQ", "1E-999999999 MTQ", "1 USD EUR", "1"})
    void quantityBeyondAllMeasureIsRefused(String quantity) throws IOException {
        Files.writeString(file, GOOD.replace("</building>",
                "</building>\n  <supply xmi:id=\"_y\"><offers leastLot=\"" + quantity + "\"/></supply>"));
        assertThat(refusal()).hasMessageContaining("the leastLot of Offer cannot be");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1E999999999", "1E-999999999", "-0.000"})
    void numberOfAnySizeIsKept(String number) throws IOException, ProjectFileException {
        Files.writeString(file, GOOD.replace("source=\"bought\"", "mass=\"" + number + "\""));
        Project loaded = store.load(file);
        store.save(loaded, file);
        assertThat(store.load(file).getCatalogue().getUnitTypes().get(0).getMass()).isEqualTo(new BigDecimal(number));
    }

    @Test
    void missingFileAndFolderAreNamed() throws IOException {
        assertThat(refusal()).hasMessageContaining("no such file");
        Files.createDirectory(file);
        assertThat(refusal()).hasMessageContaining("cannot be read");
    }

    @Test
    void anyMutationLoadsWhollyOrIsRefusedPlainly() throws IOException {
        Random random = new Random(20260302);
        byte[] good = GOOD.getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < 1000; i++) {
            Files.write(file, mutated(good, random));
            loadOrRefusal();
        }
    }

    private void loadOrRefusal() {
        try {
            assertThat(store.load(file)).isNotNull();
        } catch (ProjectFileException e) {
            assertThat(e.getMessage()).startsWith(file.toString()).endsWith(".").doesNotContain("Exception");
        }
    }

    private static byte[] mutated(byte[] good, Random random) {
        byte[] bytes = good.clone();
        int from = random.nextInt(bytes.length);
        switch (random.nextInt(4)) {
            case 0 -> bytes[from] = (byte) random.nextInt(256);
            case 1 -> bytes = Arrays.copyOf(bytes, from);
            case 2 -> {
                int to = random.nextInt(bytes.length);
                int length = Math.min(random.nextInt(40), bytes.length - Math.max(from, to));
                System.arraycopy(good, from, bytes, to, length);
            }
            default -> {
                for (int i = from; i < Math.min(bytes.length, from + 20); i++) {
                    bytes[i] = good[random.nextInt(good.length)];
                }
            }
        }
        return bytes;
    }
}
