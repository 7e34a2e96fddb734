package org.coursewright.cli;

import java.util.List;

/**
 * Adds headless commands. A bundle names its implementation in
 * {@code META-INF/services/org.coursewright.cli.CommandContribution}.
 */
public interface CommandContribution {

    /**
     * Makes the commands, new ones at each call.
     *
     * @param console where they write, not null
     * @return the commands, in the order help lists them
     */
    List<Command> commands(Console console);
}
