package org.coursewright.workbench.internal.finding;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;

/** The findings of all open projects. */
final class FindingsOfProjects implements OpenProjectsListener {

    private final Map<ProjectSession, ProjectFindings> findings = new LinkedHashMap<>();
    private final OpenProjects projects;
    private final Executor display;
    private final Runnable changed;

    /**
     * @param projects to listen to
     * @param display runs what is told in the user interface thread
     * @param changed run there each time there may be other findings
     */
    FindingsOfProjects(OpenProjects projects, Executor display, Runnable changed) {
        this.projects = projects;
        this.display = display;
        this.changed = changed;
        projects.addListener(this);
        projects.sessions().forEach(this::add);
    }

    void dispose() {
        projects.removeListener(this);
        findings.values().forEach(ProjectFindings::dispose);
    }

    List<FindingRow> rows() {
        return findings.values().stream().flatMap(each -> each.rows().stream()).toList();
    }

    boolean areCurrent() {
        return findings.values().stream().allMatch(ProjectFindings::areCurrent);
    }

    @Override
    public void projectChanged(Change change, ProjectSession session) {
        if (change == Change.OPENED) {
            add(session);
        } else if (change == Change.CLOSED) {
            findings.remove(session).dispose();
        }
        changed.run();
    }

    private void add(ProjectSession session) {
        findings.put(session, new ProjectFindings(session, display, changed));
    }
}
