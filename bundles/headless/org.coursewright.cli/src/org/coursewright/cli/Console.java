package org.coursewright.cli;

import java.io.PrintStream;
import java.util.List;

import org.coursewright.measure.Progress;

/**
 * Where a command writes.
 *
 * @param out for results, written once and complete, not null
 * @param err for messages, not null
 * @param progress hears how far the command is and may cancel it, not null
 */
public record Console(PrintStream out, PrintStream err, Progress progress) {

    /** Most messages of one kind that are shown; further ones are counted. */
    private static final int MOST_MESSAGES = 200;

    /** A console of a command that nobody watches: it runs to its end. */
    public Console(PrintStream out, PrintStream err) {
        this(out, err, Progress.NONE);
    }

    /** Writes a complete result, ending with a line end. */
    public void result(String text) {
        out.print(text.endsWith("\n") ? text : text + "\n");
        out.flush();
    }

    /** Writes messages, one line each, at most 200 of them and how many more there are. */
    public void messages(List<String> messages) {
        messages.stream().limit(MOST_MESSAGES).forEach(message -> err.print(message + "\n"));
        if (messages.size() > MOST_MESSAGES) {
            err.print("… and %d more.\n".formatted(messages.size() - MOST_MESSAGES));
        }
        err.flush();
    }
}
