package org.coursewright.exchange.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;

import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvReaderTest {

    @TempDir
    Path folder;

    @Test
    void rowsAreReadWithTheirLines() throws Exception {
        CsvTable table = read("mark,x\nW1,12\n\nW2, 4 1/2 \n");
        assertThat(table.header().cells()).containsExactly("mark", "x");
        assertThat(table.rows()).containsExactly(new CsvRow(2, List.of("W1", "12")),
                new CsvRow(4, List.of("W2", "4 1/2")));
    }

    @Test
    void inchMarksNeedNoQuotingInsideACell() throws Exception {
        assertThat(read("mark,x\nW1,12'-4 1/2\"\n").rows().get(0).cell(1)).isEqualTo("12'-4 1/2\"");
    }

    @Test
    void inchMarksMayBeQuotedAsSpreadsheetsDo() throws Exception {
        assertThat(read("mark,x\nW1,\"12'-4 1/2\"\"\"\n").rows().get(0).cell(1)).isEqualTo("12'-4 1/2\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void everyLineEndCountsOnce(String end) throws Exception {
        CsvTable table = read(String.join(end, "mark,x", "W1,\"a" + end + "b\"", "W2,2", "", "W3,3"));
        assertThat(table.rows()).extracting(CsvRow::line).containsExactly(2, 4, 6);
    }

    @Test
    void byteOrderMarkIsNoPartOfTheHeader() throws Exception {
        assertThat(read("\uFEFFmark,x\nW1,1\n").header().cell(0)).isEqualTo("mark");
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void separatorIsTakenFromTheHeader(String separator) throws Exception {
        CsvTable table = read("mark" + separator + "x\nW1" + separator + "1\n");
        assertThat(table.rows().get(0).cells()).containsExactly("W1", "1");
    }

    @Test
    void missingFileIsNamed() {
        assertRefused(folder.resolve("absent.csv"), "absent.csv: There is no such file.");
    }

    @Test
    void folderIsNoFile() {
        assertRefused(folder, ": This is not a file.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "  \n", "\uFEFF"})
    void emptyFileIsRefused(String text) throws IOException {
        assertRefused(file(text, StandardCharsets.UTF_8), "The file is empty. Its first line must name the columns.");
    }

    @Test
    void byteInAnotherEncodingIsNamedWithItsLine() throws IOException {
        assertRefused(file("mark,x\nW\u00E9,1\n", StandardCharsets.ISO_8859_1),
                "line 2: Byte 0xE9 is not UTF-8 text. Save the file as UTF-8");
    }

    @Test
    void characterCutOffAtTheEndIsRefused() throws IOException {
        Path cut = Files.write(folder.resolve("t.csv"), new byte[]{'m', '\n', (byte) 0xC3});
        assertRefused(cut, "line 2: Byte 0xC3 is not UTF-8 text.");
    }

    @Test
    void utf16IsToldToBecomeUtf8() throws IOException {
        assertRefused(file("mark,x\n", StandardCharsets.UTF_16),
                "line 1: The file is encoded as UTF-16. Save it as UTF-8");
    }

    @Test
    void nulByteIsRefused() throws IOException {
        assertRefused(file("mark,x\nW1,\0\n", StandardCharsets.UTF_8), "line 2: The file contains a NUL byte");
    }

    @Test
    void controlCharacterIsRefused() throws IOException {
        assertRefused(file("mark,x\nW1,\u001B[31m\n", StandardCharsets.UTF_8),
                "line 2: Character U+001B does not belong in a text file.");
    }

    @Test
    void openQuotationMarkIsRefusedWithItsLine() throws IOException {
        assertRefused(file("mark,x\nW1,1\nW2,\"2\n", StandardCharsets.UTF_8),
                "line 3: The row is broken: a quotation mark");
    }

    @Test
    void hugeLineIsRefusedWithoutReadingItAll() throws IOException {
        Path huge = folder.resolve("huge.csv");
        try (OutputStream out = Files.newOutputStream(huge)) {
            byte[] part = "1".repeat(1 << 20).getBytes(StandardCharsets.US_ASCII);
            for (int i = 0; i < 100; i++) {
                out.write(part);
            }
        }
        Assertions.assertTimeout(Duration.ofSeconds(1),
                () -> assertRefused(huge, "line 1: The line is longer than 64 KiB"));
    }

    @Test
    void fileOverSixteenMebibytesIsRefused() throws IOException {
        assertRefused(file("mark,x\nW1,1\n".repeat(1_500_000), StandardCharsets.US_ASCII), "larger than 16 MiB");
    }

    @Test
    void moreThanTenThousandRowsAreRefused() throws IOException {
        assertRefused(file("mark,x\n" + "W1,1\n".repeat(10_001), StandardCharsets.US_ASCII),
                "line 10002: The table has more than 10,000 rows");
    }

    private CsvTable read(String text) throws Exception {
        return new CsvReader().read(file(text, StandardCharsets.UTF_8));
    }

    private Path file(String text, Charset charset) throws IOException {
        return Files.write(folder.resolve("t.csv"), text.getBytes(charset));
    }

    private static void assertRefused(Path file, String message) {
        assertThatExceptionOfType(UnreadableFileException.class).isThrownBy(() -> new CsvReader().read(file))
                .satisfies(e -> assertThat(e.remark().toString()).startsWith(file.toString()).contains(message));
    }
}
