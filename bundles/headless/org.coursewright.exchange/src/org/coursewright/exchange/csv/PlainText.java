package org.coursewright.exchange.csv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import org.coursewright.exchange.remark.Place;

/**
 * Reads a text file in UTF-8, with or without byte order mark, and refuses what is none.
 *
 * <p>Never holds more than {@link #MOST_BYTES} of a file, and stops at the first line longer than
 * {@link #LONGEST_LINE}.
 */
final class PlainText {

    /** Largest file that is read (16 MiB). */
    static final int MOST_BYTES = 16 << 20;

    /** Longest line that is read, in bytes (64 KiB). */
    static final int LONGEST_LINE = 64 << 10;

    private final Place file;

    private PlainText(Path path) {
        file = Place.of(path.toString());
    }

    /**
     * Reads a file.
     *
     * @param path the file
     * @return its text without byte order mark
     * @throws UnreadableFileException if there is no such file or it is no text in UTF-8
     */
    static String read(Path path) throws UnreadableFileException {
        return new PlainText(path).text(path);
    }

    private String text(Path path) throws UnreadableFileException {
        if (!Files.exists(path)) {
            throw new UnreadableFileException(file, "There is no such file. Check the name and the folder.");
        }
        if (!Files.isRegularFile(path)) {
            throw new UnreadableFileException(file, "This is not a file. Name a CSV file.");
        }
        try (InputStream in = Files.newInputStream(path)) {
            return decoded(new BoundedBytes(file).read(in));
        } catch (IOException e) {
            throw new UnreadableFileException(file,
                    "The file cannot be read (%s). Check its permissions.".formatted(e.getClass().getSimpleName()), e);
        }
    }

    private String decoded(ByteBuffer bytes) throws UnreadableFileException {
        CharsetDecoder strict = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer chars = CharBuffer.allocate(bytes.remaining());
        CoderResult result = strict.decode(bytes, chars, true);
        String text = chars.flip().toString();
        if (result.isError()) {
            throw new UnreadableFileException(file.atLine(Lines.numberAt(text, text.length())),
                    "Byte 0x%02X is not UTF-8 text. Save the file as UTF-8 (CSV UTF-8) and try again."
                            .formatted(bytes.get(bytes.position())));
        }
        return withoutControls(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    private String withoutControls(String text) throws UnreadableFileException {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean layout = c == '\n' || c == '\r' || c == '\t';
            if (!layout && (Character.isISOControl(c) || c == '\uFFFE' || c == '\uFFFF')) {
                throw new UnreadableFileException(file.atLine(Lines.numberAt(text, i)),
                        "Character U+%04X does not belong in a text file. Delete it.".formatted((int) c));
            }
        }
        return text;
    }
}
