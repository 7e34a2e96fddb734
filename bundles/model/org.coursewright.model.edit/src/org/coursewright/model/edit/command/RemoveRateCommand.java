package org.coursewright.model.edit.command;

import org.coursewright.model.estimate.Rate;

/** Removes what a resource costs. */
public final class RemoveRateCommand extends RemoveCommand {

    /** @param rate of a project */
    public RemoveRateCommand(Rate rate) {
        super(rate);
    }
}
