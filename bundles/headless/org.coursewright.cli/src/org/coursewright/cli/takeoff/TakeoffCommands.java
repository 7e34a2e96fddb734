package org.coursewright.cli.takeoff;

import java.util.List;

import org.coursewright.cli.Command;
import org.coursewright.cli.CommandContribution;
import org.coursewright.cli.Console;

/** Adds the commands about what a building takes. */
public final class TakeoffCommands implements CommandContribution {

    @Override
    public List<Command> commands(Console console) {
        return List.of(new TakeoffCommand(console));
    }
}
