package org.coursewright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Runs a headless command as plain Java, which starts more than a second sooner than through OSGi. */
public final class Main {

    private Main() {
    }

    /** @param args the command's name and what goes with it */
    public static void main(String[] args) {
        System.exit(run(args));
    }

    private static int run(String[] args) {
        try (PrintStream out = utf8(FileDescriptor.out); PrintStream err = utf8(FileDescriptor.err)) {
            return CommandLineEntry.run(args, out, err);
        }
    }

    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
    }
}
