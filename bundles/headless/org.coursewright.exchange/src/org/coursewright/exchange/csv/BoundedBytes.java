package org.coursewright.exchange.csv;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;

import org.coursewright.exchange.remark.Place;

/** Takes in the bytes of a text file and stops as soon as they cannot be one. */
final class BoundedBytes {

    private static final int CHUNK = 64 << 10;

    private final Place file;
    private int line = 1;
    private int inLine;

    BoundedBytes(Place file) {
        this.file = file;
    }

    ByteBuffer read(InputStream in) throws IOException, UnreadableFileException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        byte[] chunk = new byte[CHUNK];
        for (int count = in.readNBytes(chunk, 0, CHUNK); count > 0; count = in.readNBytes(chunk, 0, CHUNK)) {
            if (all.size() == 0) {
                checkEncodingMark(chunk, count);
            }
            checkBytes(chunk, count);
            all.write(chunk, 0, count);
            if (all.size() > PlainText.MOST_BYTES) {
                throw new UnreadableFileException(file,
                        "The file is larger than 16 MiB, more than any schedule. Check that it is the right file.");
            }
        }
        return ByteBuffer.wrap(all.toByteArray());
    }

    private void checkEncodingMark(byte[] bytes, int count) throws UnreadableFileException {
        int mark = count < 2 ? 0 : (bytes[0] & 0xFF) << 8 | bytes[1] & 0xFF;
        if (mark == 0xFEFF || mark == 0xFFFE) {
            throw new UnreadableFileException(file.atLine(1),
                    "The file is encoded as UTF-16. Save it as UTF-8 (CSV UTF-8) and try again.");
        }
    }

    private void checkBytes(byte[] bytes, int count) throws UnreadableFileException {
        for (int i = 0; i < count; i++) {
            if (bytes[i] == 0) {
                throw new UnreadableFileException(file.atLine(line),
                        "The file contains a NUL byte, so it is no text in UTF-8. Save it as CSV in UTF-8.");
            }
            if (bytes[i] == '\n' || bytes[i] == '\r' && (i + 1 == count || bytes[i + 1] != '\n')) {
                line++;
                inLine = 0;
            } else if (++inLine > PlainText.LONGEST_LINE) {
                throw new UnreadableFileException(file.atLine(line),
                        "The line is longer than 64 KiB, more than any row. Check that it is the right file.");
            }
        }
    }
}
