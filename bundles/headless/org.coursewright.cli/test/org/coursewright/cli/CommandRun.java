package org.coursewright.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** One command that was run in this process, and what came of it. */
record CommandRun(int status, String out, String err) {

    static CommandRun of(Object... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status;
        try (PrintStream toOut = new PrintStream(out, false, StandardCharsets.UTF_8);
                PrintStream toErr = new PrintStream(err, false, StandardCharsets.UTF_8)) {
            status = CommandLineEntry.run(List.of(args).stream().map(String::valueOf).toArray(String[]::new), toOut,
                    toErr);
        }
        return new CommandRun(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    JsonObject json() {
        return JsonParser.parseString(out).getAsJsonObject();
    }
}
