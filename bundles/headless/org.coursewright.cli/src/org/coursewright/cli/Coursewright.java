package org.coursewright.cli;

import java.util.concurrent.Callable;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** What is typed before the name of a command. */
@CommandLine.Command(name = "coursewright", mixinStandardHelpOptions = true, versionProvider = ProgramVersion.class, //
        exitCodeListHeading = "%nExit status:%n", //
        exitCodeList = {"0:the job is done", "1:it is done, but findings must be mended before it can be built so",
                "2:nothing was done: what was typed or what a file holds is at fault",
                "3:nothing was done: the program is at fault"}, //
        description = "Plans buildings of earth block and other unit masonry.", //
        footer = {"", "Layouts and findings are aids to planning. Local building codes, the structural",
                "designer and the licensed trades have the last word."})
final class Coursewright implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Option(names = "--trace", scope = ScopeType.INHERIT, description = "Show where an internal error comes from.")
    private boolean trace;

    @Override
    public Integer call() {
        throw new ParameterException(spec.commandLine(), "Name a command%s: %s."
                .formatted(trace ? " to trace" : "", String.join(", ", spec.subcommands().keySet())));
    }
}
