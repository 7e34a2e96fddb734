package org.coursewright.workbench.internal.project;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;
import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/**
 * Remembers from one start to the next which projects were open. Written at every change rather than at the end, so
 * that after a crash the same projects open again and their edits are recovered.
 */
public final class RememberedProjects implements OpenProjectsListener {

    private static final String KEY = "openProjects";
    private static final String SEPARATOR = "\n";

    private final IEclipsePreferences preferences = InstanceScope.INSTANCE.getNode(WorkbenchIds.BUNDLE);
    private final OpenProjects projects;

    /** @param projects whose files are remembered */
    public RememberedProjects(OpenProjects projects) {
        this.projects = projects;
    }

    /** @return the files that were open when the workbench was last used, oldest first */
    public List<Path> files() {
        return preferences.get(KEY, "").lines().map(Path::of).toList();
    }

    @Override
    public void projectChanged(Change change, ProjectSession session) {
        if (change == Change.OPENED || change == Change.CLOSED) {
            remember();
        }
    }

    private void remember() {
        preferences.put(KEY, projects.sessions().stream().map(session -> session.file().toString())
                .collect(Collectors.joining(SEPARATOR)));
        try {
            preferences.flush();
        } catch (BackingStoreException e) {
            ILog.of(getClass()).warn(ProjectText.notRemembered, e);
        }
    }
}
