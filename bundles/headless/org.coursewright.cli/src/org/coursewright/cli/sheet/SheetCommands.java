package org.coursewright.cli.sheet;

import java.util.List;

import org.coursewright.cli.Command;
import org.coursewright.cli.CommandContribution;
import org.coursewright.cli.Console;

/** Adds the commands about setting-out sheets. */
public final class SheetCommands implements CommandContribution {

    @Override
    public List<Command> commands(Console console) {
        return List.of(new SheetsCommand(console));
    }
}
