package org.coursewright.cli.fit;

import java.util.List;

import org.coursewright.cli.Command;
import org.coursewright.cli.CommandContribution;
import org.coursewright.cli.Console;

/** Adds the command about dimensions. */
public final class FitCommands implements CommandContribution {

    @Override
    public List<Command> commands(Console console) {
        return List.of(new FitCommand(console));
    }
}
