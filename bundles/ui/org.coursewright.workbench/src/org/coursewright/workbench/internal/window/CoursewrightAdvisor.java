package org.coursewright.workbench.internal.window;

import java.nio.file.Path;
import java.util.List;

import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.WorkbenchIds;
import org.coursewright.workbench.finding.FindingMarkers;
import org.coursewright.workbench.internal.project.ProjectOpening;
import org.coursewright.workbench.internal.project.RememberedProjects;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Tells the platform how this workbench starts and ends. */
final class CoursewrightAdvisor extends WorkbenchAdvisor {

    private final StartArguments arguments;

    CoursewrightAdvisor(StartArguments arguments) {
        this.arguments = arguments;
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        configurer.setSaveAndRestore(true);
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return WorkbenchIds.PLANNING;
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new WindowAdvisor(configurer);
    }

    @Override
    public void postStartup() {
        IWorkbench workbench = getWorkbenchConfigurer().getWorkbench();
        OpenProjects projects = workbench.getService(OpenProjects.class);
        workbench.getService(FindingMarkers.class); // listens from now on
        RememberedProjects remembered = new RememberedProjects(projects);
        List<Path> files = arguments.projects().isEmpty() ? remembered.files() : arguments.projects();
        projects.addListener(remembered);
        ProjectOpening opening = new ProjectOpening(projects, workbench.getActiveWorkbenchWindow().getShell());
        files.forEach(opening::open);
    }
}
