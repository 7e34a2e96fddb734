package org.coursewright.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.ServiceLoader;
import java.util.concurrent.CancellationException;

import org.coursewright.core.session.ProjectFileException;

import picocli.CommandLine;

/** Runs headless commands. Holds no state, so that commands may run one after the other or side by side. */
public final class CommandLineEntry {

    private static final String TRACE = "--trace";

    private CommandLineEntry() {
    }

    /**
     * Runs one command.
     *
     * @param args what was typed, the command's name first
     * @param out for results
     * @param err for messages
     * @return the exit status, see {@link ExitStatus}
     */
    public static int run(String[] args, PrintStream out, PrintStream err) {
        return run(args, new Console(out, err));
    }

    /**
     * Runs one command for another program, which may watch and cancel it.
     *
     * @param args what was typed, the command's name first
     * @param console for results, messages and progress
     * @return the exit status, see {@link ExitStatus}
     */
    public static int run(String[] args, Console console) {
        StringWriter help = new StringWriter();
        try (PrintWriter writer = new PrintWriter(help)) {
            int status = commandLine(console, writer).execute(args);
            if (!help.toString().isEmpty()) {
                console.result(help.toString());
            }
            return status;
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            // the last line of defence: whatever slips through is told as what it is, a fault of ours
            return internalError(console, e, List.of(args).contains(TRACE));
        }
    }

    private static CommandLine commandLine(Console console, PrintWriter help) {
        CommandLine line = new CommandLine(new Coursewright());
        for (CommandContribution contribution : ServiceLoader.load(CommandContribution.class,
                CommandContribution.class.getClassLoader())) {
            contribution.commands(console).forEach(line::addSubcommand);
        }
        line.addSubcommand(new CommandLine.HelpCommand());
        line.setOut(help).setErr(help);
        line.setExecutionStrategy(new CommandLine.RunLast());
        line.setExitCodeExceptionMapper(thrown -> ExitStatus.INTERNAL_ERROR.code());
        line.setParameterExceptionHandler((thrown, arguments) -> usageError(console, thrown));
        line.setExecutionExceptionHandler((thrown, of, parsed) -> failure(console, thrown, of));
        return line;
    }

    private static int usageError(Console console, CommandLine.ParameterException thrown) {
        String name = thrown.getCommandLine().getCommandSpec().qualifiedName();
        console.messages(List.of(thrown.getMessage(), "How to use it: %s --help".formatted(name)));
        return ExitStatus.BAD_INPUT.code();
    }

    private static int failure(Console console, Exception thrown, CommandLine of) {
        if (thrown instanceof BadInputException bad) {
            console.messages(bad.messages());
            return ExitStatus.BAD_INPUT.code();
        }
        if (thrown instanceof ProjectFileException bad) {
            console.messages(List.of(bad.getMessage()));
            return ExitStatus.BAD_INPUT.code();
        }
        if (thrown instanceof CancellationException) {
            return ExitStatus.CANCELLED.code();
        }
        return internalError(console, thrown, of.getParseResult().hasMatchedOption(TRACE));
    }

    private static int internalError(Console console, Throwable thrown, boolean trace) {
        console.messages(List.of("Internal error: %s.".formatted(thrown),
                "This is a fault in Coursewright, not in your files; nothing was written. "
                        + (trace ? "Please report what follows." : "Add --trace to see where it is, and report it.")));
        if (trace) {
            console.messages(StackTrace.lines(thrown));
        }
        return ExitStatus.INTERNAL_ERROR.code();
    }
}
