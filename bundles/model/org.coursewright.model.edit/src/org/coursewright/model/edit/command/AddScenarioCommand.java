package org.coursewright.model.edit.command;

import org.coursewright.model.estimate.Scenario;
import org.coursewright.model.project.Project;

/** Adds another way to build and buy. */
public final class AddScenarioCommand extends AddCommand {

    private final Project project;
    private final Scenario scenario;

    /**
     * @param project to add to
     * @param scenario with its values, in no project yet
     */
    public AddScenarioCommand(Project project, Scenario scenario) {
        super(project, scenario);
        this.project = project;
        this.scenario = scenario;
    }

    @Override
    protected void apply() {
        EstimateOf.project(project).getScenarios().add(scenario);
    }
}
