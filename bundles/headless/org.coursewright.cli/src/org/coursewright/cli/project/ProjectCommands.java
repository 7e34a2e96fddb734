package org.coursewright.cli.project;

import java.util.List;

import org.coursewright.cli.Command;
import org.coursewright.cli.CommandContribution;
import org.coursewright.cli.Console;

/** Adds the commands about the project as a whole. */
public final class ProjectCommands implements CommandContribution {

    @Override
    public List<Command> commands(Console console) {
        return List.of(new NewCommand(console), new CheckCommand(console), new DescribeCommand(console));
    }
}
