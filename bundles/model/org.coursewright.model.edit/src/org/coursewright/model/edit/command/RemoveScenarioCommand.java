package org.coursewright.model.edit.command;

import org.coursewright.model.estimate.Scenario;

/** Removes a way to build and buy. */
public final class RemoveScenarioCommand extends RemoveCommand {

    /** @param scenario of a project */
    public RemoveScenarioCommand(Scenario scenario) {
        super(scenario);
    }
}
