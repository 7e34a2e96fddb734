package org.coursewright.core.session;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a recovery journal holds: a whole project that is not saved yet.
 *
 * @param base the project file that the edits started from
 * @param editedAt when the last edit was made
 * @param content a project file with all edits
 */
record JournalEntry(Fingerprint base, Instant editedAt, byte[] content) {

    private static final int LONGEST_HEADER = 512;

    private static final Pattern HEADER = Pattern.compile("Coursewright recovery journal 1\nbase ([0-9a-f]{64})\n"
            + "edited (\\d{1,15}) ms .*\ncontent ([0-9a-f]{64})\n\n");

    /** @return the bytes of the journal: a header of text, an empty line, the project file */
    byte[] stored() {
        byte[] header = "Coursewright recovery journal 1\nbase %s\nedited %d ms (%s)\ncontent %s\n\n"
                .formatted(base.hex(), editedAt.toEpochMilli(), editedAt, Fingerprint.of(content).hex())
                .getBytes(StandardCharsets.US_ASCII);
        byte[] all = Arrays.copyOf(header, header.length + content.length);
        System.arraycopy(content, 0, all, header.length, content.length);
        return all;
    }

    /**
     * Reads what {@link #stored()} wrote.
     *
     * @param journal bytes of a journal
     * @return what it holds, empty if it is damaged
     */
    static Optional<JournalEntry> fromStored(byte[] journal) {
        String start = new String(journal, 0, Math.min(LONGEST_HEADER, journal.length), StandardCharsets.ISO_8859_1);
        Matcher header = HEADER.matcher(start);
        if (!header.lookingAt()) {
            return Optional.empty();
        }
        byte[] content = Arrays.copyOfRange(journal, header.end(), journal.length);
        JournalEntry entry = new JournalEntry(new Fingerprint(header.group(1)),
                Instant.ofEpochMilli(Long.parseLong(header.group(2))), content);
        return Optional.of(entry).filter(e -> Fingerprint.of(content).hex().equals(header.group(3)));
    }
}
