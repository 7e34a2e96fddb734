package org.coursewright.model.edit.command;

import org.coursewright.model.estimate.Rate;
import org.coursewright.model.project.Project;

/** Adds what a resource costs. */
public final class AddRateCommand extends AddCommand {

    private final Project project;
    private final Rate rate;

    /**
     * @param project to add to
     * @param rate with its values, in no project yet
     */
    public AddRateCommand(Project project, Rate rate) {
        super(project, rate);
        this.project = project;
        this.rate = rate;
    }

    @Override
    protected void apply() {
        EstimateOf.project(project).getRates().add(rate);
    }
}
