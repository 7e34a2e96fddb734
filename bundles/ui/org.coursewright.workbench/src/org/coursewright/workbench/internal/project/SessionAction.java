package org.coursewright.workbench.internal.project;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;
import org.eclipse.jface.action.Action;
import org.eclipse.ui.actions.ActionFactory;

/** An action on the active project that keeps its label and its state up to date. */
abstract class SessionAction extends Action implements OpenProjectsListener {

    private final OpenProjects projects;

    SessionAction(OpenProjects projects, ActionFactory role) {
        this.projects = projects;
        setId(role.getId());
        setActionDefinitionId(role.getCommandId());
        projects.addListener(this);
    }

    /** Sets label and state for the active project, or for none. */
    abstract void update();

    final OpenProjects projects() {
        return projects;
    }

    final void dispose() {
        projects.removeListener(this);
    }

    @Override
    public final void projectChanged(Change change, ProjectSession session) {
        update();
    }
}
