package org.coursewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Ten thousand spoilt files: whatever is in them, a command ends with a result or a plain refusal, never with a fault of
 * the program, and never with half an output. Several hands at once, as commands may run side by side. The seed of a file
 * that fails is in the message.
 */
class FuzzTest {

    private static final int FILES = 10_000;
    private static final int HANDS = 4;

    @TempDir
    Path folder;

    @Test
    void spoiltFilesAreRefusedOrUsedButNeverBreakACommand() {
        List<SpoiltFiles> hands = IntStream.range(0, HANDS).parallel().mapToObj(this::spoilt).toList();

        assertThat(hands).flatMap(SpoiltFiles::faults).isEmpty();
        assertThat(hands).flatMap(hand -> hand.statuses().keySet()).containsOnly(0, 1, 2);
        assertThat(hands.stream().mapToInt(hand -> hand.statuses().get(0)).sum()).as("files that could still be used")
                .isGreaterThan(FILES / 20);
    }

    /** Spoils the share of one hand: runs of seeds, for what is spoilt how goes by the seed. */
    private SpoiltFiles spoilt(int hand) {
        int share = FILES / HANDS;
        try {
            SpoiltFiles files = new SpoiltFiles(Files.createDirectory(folder.resolve("hand" + hand)));
            for (int seed = hand * share; seed < (hand + 1) * share; seed++) {
                files.spoil(seed);
            }
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
