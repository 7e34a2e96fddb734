package org.coursewright.model.edit.command;

import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;
import org.coursewright.model.project.Site;

/** Says where the project is built and what the place is like. */
public final class DescribeSiteCommand extends CopyCommand {

    private final Project project;

    /**
     * @param project that is built there
     * @param site all that is to be known about the site, in no project
     */
    public DescribeSiteCommand(Project project, Site site) {
        super(project, project.getSite(), site);
        this.project = project;
    }

    @Override
    protected Site make() {
        Site made = ProjectFactory.eINSTANCE.createSite();
        project.setSite(made);
        return made;
    }
}
