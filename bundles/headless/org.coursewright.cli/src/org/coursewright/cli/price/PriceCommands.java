package org.coursewright.cli.price;

import java.util.List;

import org.coursewright.cli.Command;
import org.coursewright.cli.CommandContribution;
import org.coursewright.cli.Console;

/** Adds the commands about what a building costs. */
public final class PriceCommands implements CommandContribution {

    @Override
    public List<Command> commands(Console console) {
        return List.of(new PriceCommand(console), new RatesCommand(console), new MixesCommand(console));
    }
}
