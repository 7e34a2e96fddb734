package org.coursewright.model.edit.command;

import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectPackage;

/** Gives the project a name. */
public final class NameProjectCommand extends FeatureCommand {

    /**
     * @param project to name
     * @param name its new name; spaces at its ends are left out
     */
    public NameProjectCommand(Project project, String name) {
        super(project, name.strip());
        set(ProjectPackage.Literals.PROJECT__NAME, name.strip());
    }
}
