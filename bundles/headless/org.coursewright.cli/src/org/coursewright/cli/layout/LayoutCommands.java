package org.coursewright.cli.layout;

import java.util.List;

import org.coursewright.cli.Command;
import org.coursewright.cli.CommandContribution;
import org.coursewright.cli.Console;

/** Adds the commands about laying walls. */
public final class LayoutCommands implements CommandContribution {

    @Override
    public List<Command> commands(Console console) {
        return List.of(new LayCommand(console));
    }
}
