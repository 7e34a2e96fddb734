package org.coursewright.workbench.internal.window;

import java.util.Optional;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;
import org.eclipse.core.runtime.Platform;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;

/** Keeps the name of the active project, with an asterisk while it has unsaved edits, in the title of the window. */
final class WindowTitle implements OpenProjectsListener {

    private static final String UNSAVED = "*";

    private final IWorkbenchWindowConfigurer window;
    private final OpenProjects projects;

    WindowTitle(IWorkbenchWindowConfigurer window, OpenProjects projects) {
        this.window = window;
        this.projects = projects;
        update();
    }

    @Override
    public void projectChanged(Change change, ProjectSession session) {
        update();
    }

    private void update() {
        String product = Platform.getProduct().getName();
        Optional<String> project = projects.active().map(WindowTitle::name);
        window.setTitle(project.map(name -> NLS.bind(WindowText.title, name, product)).orElse(product));
    }

    private static String name(ProjectSession session) {
        String name = session.project().getName();
        return session.isDirty() ? UNSAVED + name : name;
    }
}
