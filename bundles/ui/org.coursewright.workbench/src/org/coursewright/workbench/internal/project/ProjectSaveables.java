package org.coursewright.workbench.internal.project;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;
import org.coursewright.workbench.saving.ProjectSaveable;
import org.eclipse.ui.ISaveablesLifecycleListener;
import org.eclipse.ui.ISaveablesSource;
import org.eclipse.ui.Saveable;
import org.eclipse.ui.SaveablesLifecycleEvent;
import org.eclipse.ui.services.IServiceLocator;

/** Keeps the platform informed about which projects have unsaved edits, so that it asks before they are lost. */
public final class ProjectSaveables implements OpenProjectsListener {

    private final ISaveablesSource source;
    private final OpenProjects projects;
    private final ISaveablesLifecycleListener platform;
    /** One for each project: where several parts hold a project, the platform tells them apart by identity. */
    private final Map<ProjectSession, ProjectSaveable> handed = new IdentityHashMap<>();

    /**
     * @param source the part that answers for the projects
     * @param site services of the part
     */
    public ProjectSaveables(ISaveablesSource source, IServiceLocator site) {
        this.source = source;
        this.projects = site.getService(OpenProjects.class);
        this.platform = site.getService(ISaveablesLifecycleListener.class);
        projects.addListener(this);
    }

    /** Stops informing the platform; to be called when the part is disposed of. */
    public void dispose() {
        projects.removeListener(this);
    }

    /** @return every open project */
    public Saveable[] all() {
        return asSaveables(projects.sessions());
    }

    /** @return the project that save works on, or none */
    public Saveable[] active() {
        return asSaveables(projects.active().stream().toList());
    }

    /** @return whether any project has unsaved edits */
    public boolean isDirty() {
        return projects.sessions().stream().anyMatch(ProjectSession::isDirty);
    }

    /**
     * Lets the platform ask whether to save a project that is about to be closed, and save it if so. The platform asks only
     * if every part that holds the project lets go of it, so its editors are counted in.
     *
     * @param session of the project
     * @return whether it may be closed now
     */
    public boolean mayClose(ProjectSession session) {
        List<ProjectSession> holders = Collections.nCopies(1 + ProjectEditors.on(session), session);
        return !tell(SaveablesLifecycleEvent.PRE_CLOSE, holders).isVeto();
    }

    @Override
    public void projectChanged(Change change, ProjectSession session) {
        switch (change) {
            case OPENED -> tell(SaveablesLifecycleEvent.POST_OPEN, session);
            case CLOSED -> {
                tell(SaveablesLifecycleEvent.POST_CLOSE, session);
                handed.remove(session);
            }
            case EDITED, JOURNAL_FAILED, ACTIVATED -> tell(SaveablesLifecycleEvent.DIRTY_CHANGED, session);
        }
    }

    private void tell(int what, ProjectSession session) {
        tell(what, List.of(session));
    }

    private SaveablesLifecycleEvent tell(int what, List<ProjectSession> sessions) {
        var event = new SaveablesLifecycleEvent(source, what, asSaveables(sessions), false);
        platform.handleLifecycleEvent(event);
        return event;
    }

    private Saveable[] asSaveables(List<ProjectSession> sessions) {
        return sessions.stream().map(session -> handed.computeIfAbsent(session, ProjectSaveable::new))
                .toArray(Saveable[]::new);
    }
}
