package org.coursewright.model.edit.command;

import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Storey;
import org.coursewright.model.project.Project;

/** Adds a storey on top. */
public final class AddStoreyCommand extends AddCommand {

    private final Project project;
    private final Storey storey;

    /**
     * @param project to add to
     * @param storey with its values, in no project yet
     */
    public AddStoreyCommand(Project project, Storey storey) {
        super(project, storey);
        this.project = project;
        this.storey = storey;
    }

    @Override
    protected void apply() {
        if (project.getBuilding() == null) {
            project.setBuilding(BuildingFactory.eINSTANCE.createBuilding());
        }
        project.getBuilding().getStoreys().add(storey);
    }
}
