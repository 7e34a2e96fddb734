package org.coursewright.cli;

import java.util.ArrayList;
import java.util.List;

/** Where a failure came from, as lines of text. */
final class StackTrace {

    private StackTrace() {
    }

    static List<String> lines(Throwable thrown) {
        List<String> lines = new ArrayList<>();
        Throwable current = thrown;
        for (int depth = 0; current != null && depth < 10; depth++) {
            lines.add(current.toString());
            for (StackTraceElement element : current.getStackTrace()) {
                lines.add("    at " + element);
            }
            current = current.getCause();
        }
        return lines;
    }
}
