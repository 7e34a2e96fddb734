package org.coursewright.workbench.internal.window;

import java.nio.file.Path;
import java.util.List;

import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.WorkbenchIds;
import org.coursewright.workbench.finding.FindingMarkers;
import org.coursewright.workbench.internal.appearance.Looks;
import org.coursewright.workbench.internal.preference.Preferences;
import org.coursewright.workbench.internal.project.ProjectOpening;
import org.coursewright.workbench.internal.project.RememberedProjects;
import org.coursewright.workbench.internal.project.RestoredEditors;
import org.coursewright.workbench.internal.safety.Autosave;
import org.coursewright.workbench.internal.safety.RecoveryReport;
import org.coursewright.workbench.internal.welcome.Welcome;
import org.coursewright.workbench.notice.Notices;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
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

    /** Before the window opens, because editors that open again open their projects. */
    @Override
    public void preStartup() {
        IWorkbench workbench = getWorkbenchConfigurer().getWorkbench();
        workbench.getService(FindingMarkers.class); // listens from now on
        new Looks(Preferences.ofWorkbench()).follow();
        watch(workbench.getService(OpenProjects.class), workbench.getService(Notices.class));
    }

    private static void settleEditors(IWorkbenchPage page, OpenProjects projects) {
        RestoredEditors editors = new RestoredEditors(page);
        editors.closeLost();
        projects.addListener(editors);
        if (projects.sessions().isEmpty()) {
            showWelcome(page);
        }
        EditorArea.show(page);
    }

    private static void showWelcome(IWorkbenchPage page) {
        try {
            Welcome.show(page);
        } catch (PartInitException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void watch(OpenProjects projects, Notices notices) {
        projects.addListener(new RecoveryReport(notices, Display.getCurrent()::asyncExec));
        projects.addListener(new Autosave(projects, Preferences.ofWorkbench(), notices,
                Display.getCurrent()::timerExec));
    }

    /** What the platform keeps of open projects is in order at the next start. */
    @Override
    public void postShutdown() {
        try {
            ResourcesPlugin.getWorkspace().save(true, null);
        } catch (CoreException e) {
            ILog.of(getClass()).log(e.getStatus());
        }
    }

    @Override
    public void postStartup() {
        IWorkbench workbench = getWorkbenchConfigurer().getWorkbench();
        OpenProjects projects = workbench.getService(OpenProjects.class);
        RememberedProjects remembered = new RememberedProjects(projects);
        List<Path> files = arguments.projects().isEmpty() ? remembered.files() : arguments.projects();
        projects.addListener(remembered);
        ProjectOpening opening = new ProjectOpening(projects, workbench.getActiveWorkbenchWindow().getShell());
        files.forEach(opening::open);
        settleEditors(workbench.getActiveWorkbenchWindow().getActivePage(), projects);
    }
}
