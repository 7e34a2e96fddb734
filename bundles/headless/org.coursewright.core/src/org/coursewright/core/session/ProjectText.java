package org.coursewright.core.session;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Turns the bytes of a project file into text, refusing whatever is not plain UTF-8. */
final class ProjectText {

    static final String RESTORE = "Restore it from a copy or from version control.";

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private ProjectText() {
    }

    /**
     * @param file for messages
     * @param content bytes of the file
     * @return its text without byte order mark
     * @throws ProjectFileException if it is empty, holds NUL or is not UTF-8
     */
    static String decode(Path file, byte[] content) throws ProjectFileException {
        refuseOtherEncodings(file, content);
        CharBuffer text = CharBuffer.allocate(content.length);
        ByteBuffer bytes = ByteBuffer.wrap(content);
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(bytes, text, true);
        if (result.isError()) {
            throw new ProjectFileException(file, lineOf(content, bytes.position()),
                    "the file is not encoded as UTF-8 here. Save it as UTF-8, or restore it from a copy.", null);
        }
        String decoded = text.flip().toString();
        String plain = !decoded.isEmpty() && decoded.charAt(0) == BYTE_ORDER_MARK ? decoded.substring(1) : decoded;
        if (plain.isBlank()) {
            throw new ProjectFileException(file, "the file is empty. " + RESTORE);
        }
        return plain;
    }

    private static void refuseOtherEncodings(Path file, byte[] content) throws ProjectFileException {
        if (content.length >= 2
                && (content[0] == (byte) 0xFE && content[1] == (byte) 0xFF
                        || content[0] == (byte) 0xFF && content[1] == (byte) 0xFE)) {
            throw new ProjectFileException(file, "the file is encoded as UTF-16. Save it as UTF-8.");
        }
        for (int i = 0; i < content.length; i++) {
            if (content[i] == 0) {
                throw new ProjectFileException(file, lineOf(content, i),
                        "the file holds a NUL byte, so it is damaged or no text at all. " + RESTORE, null);
            }
        }
    }

    private static Place lineOf(byte[] content, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            if (content[i] == '\n') {
                line++;
            }
        }
        return new Place(line, 0);
    }
}
