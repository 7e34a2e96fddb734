package org.coursewright.core.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;

import org.coursewright.model.edit.command.NameProjectCommand;

/**
 * Another process that edits a project, one numbered edit after the other, and reports each edit and each save once it
 * is done; and the hand that starts and kills it.
 */
final class EditingProcess {

    /** What the process does besides editing. */
    enum Mode {
        /** Saves after each edit. */
        SAVE,
        /** Never saves. */
        EDIT_ONLY
    }

    /**
     * A line of its report.
     *
     * @param what "opened", "edited" or "saved"
     * @param number of the edit it is about
     * @param at when it was done, by the clock of the machine
     */
    record Report(String what, int number, Instant at) {
        static Report of(String line) {
            String[] parts = line.split(" ");
            return new Report(parts[0], Integer.parseInt(parts[1]), Instant.ofEpochMilli(Long.parseLong(parts[2])));
        }
    }

    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final Process process;
    private final Path reports;

    private EditingProcess(Process process, Path reports) {
        this.process = process;
        this.reports = reports;
    }

    /** The process itself: file, mode, milliseconds between edits. */
    public static void main(String[] args) throws ProjectFileException, InterruptedException {
        try (ProjectSession session = ProjectSession.open(Path.of(args[0]))) {
            int number = numberIn(session);
            report("opened", number);
            while (true) {
                number++;
                session.execute(new NameProjectCommand(session.project(), "Edit " + number));
                report("edited", number);
                if (Mode.valueOf(args[1]) == Mode.SAVE) {
                    session.save();
                    report("saved", number);
                }
                Thread.sleep(Long.parseLong(args[2]));
            }
        }
    }

    static int numberIn(ProjectSession session) {
        return Integer.parseInt(session.project().getName().replaceAll("\\D", ""));
    }

    private static void report(String what, int number) {
        System.out.println(what + " " + number + " " + System.currentTimeMillis());
        System.out.flush();
    }

    static EditingProcess start(Path file, Mode mode, Duration betweenEdits) throws IOException {
        String classPath = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        Path reports = Files.createTempFile(file.toAbsolutePath().getParent(), "reports", ".txt");
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx128m", "-cp", classPath,
                EditingProcess.class.getName(), file.toString(), mode.name(), Long.toString(betweenEdits.toMillis()))
                .redirectError(ProcessBuilder.Redirect.INHERIT).redirectOutput(reports.toFile()).start();
        return new EditingProcess(process, reports);
    }

    /** Waits until the process has opened the project and made its first edit. */
    void awaitFirstEdit() throws InterruptedException, IOException {
        Instant end = Instant.now().plus(PATIENCE);
        while (reports().stream().noneMatch(report -> report.what().equals("edited"))) {
            if (!process.isAlive() || Instant.now().isAfter(end)) {
                throw new IllegalStateException("The process did not edit the project.");
            }
            Thread.sleep(20);
        }
    }

    long number() {
        return process.pid();
    }

    /** Kills the process and gives all its reports; the moment of the kill is no later than the return. */
    List<Report> kill() throws InterruptedException, IOException {
        process.destroyForcibly();
        if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
            throw new IllegalStateException("The process cannot be killed.");
        }
        return reports();
    }

    /** All complete lines; the last may be cut off by the kill. */
    private List<Report> reports() throws IOException {
        String text = Files.readString(reports);
        return text.substring(0, text.lastIndexOf('\n') + 1).lines().map(Report::of).toList();
    }
}
