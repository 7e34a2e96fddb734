package org.coursewright.workbench.internal.newproject;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;

import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.exchange.schedule.ImportOutcome;
import org.coursewright.exchange.schedule.ImportSettings;
import org.coursewright.exchange.schedule.RuleTextException;
import org.coursewright.exchange.schedule.ScheduleFiles;
import org.coursewright.exchange.schedule.ScheduleImport;
import org.coursewright.measure.LengthFormat;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.internal.element.ElementIcons;
import org.coursewright.workbench.internal.preference.Preferences;
import org.coursewright.workbench.internal.project.ProjectOpening;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.INewWizard;
import org.eclipse.ui.IWorkbench;

/** Makes a project of an architect's schedules and opens it; makes nothing if anything is wrong with them. */
public final class NewProjectWizard extends Wizard implements INewWizard {

    private IWorkbench workbench;
    private SchedulesPage schedules;
    private ProjectPage project;

    @Override
    public void init(IWorkbench ofWizard, IStructuredSelection selection) {
        workbench = ofWizard;
        setWindowTitle(WizardText.windowTitle);
        setDefaultPageImageDescriptor(ElementIcons.named("new-project-banner"));
        setNeedsProgressMonitor(true);
    }

    @Override
    public void addPages() {
        schedules = new SchedulesPage(Preferences.ofWorkbench().newProjectsIn());
        project = new ProjectPage(schedules);
        addPage(schedules);
        addPage(project);
    }

    @Override
    public boolean performFinish() {
        try {
            return make(settings(), schedules.files(), project.target());
        } catch (RuleTextException e) {
            throw new IllegalStateException("The page let a rule pass that cannot be read.", e);
        }
    }

    private ImportSettings settings() throws RuleTextException {
        LengthFormat format = schedules.format();
        return new ImportSettings(project.projectName(), format, project.rule(format));
    }

    private boolean make(ImportSettings settings, ScheduleFiles files, Path target) {
        ImportOutcome outcome = read(settings, files);
        if (outcome instanceof ImportOutcome.Imported imported) {
            return writeAndOpen(imported, target);
        }
        new RefusalDialog(getShell(), ((ImportOutcome.Refused) outcome).errors()).open();
        return false;
    }

    private ImportOutcome read(ImportSettings settings, ScheduleFiles files) {
        ImportOutcome[] read = new ImportOutcome[1];
        try {
            getContainer().run(true, false, monitor -> {
                monitor.beginTask(WizardText.reading, 1);
                read[0] = new ScheduleImport(settings).read(files);
                monitor.done();
            });
        } catch (InvocationTargetException | InterruptedException e) {
            throw new IllegalStateException("Reading schedules ended before it was done.", e);
        }
        return read[0];
    }

    private boolean writeAndOpen(ImportOutcome.Imported imported, Path target) {
        try {
            ProjectSession.replace(imported.project(), target);
        } catch (ProjectFileException e) {
            MessageDialog.openError(getShell(), WizardText.windowTitle, e.getMessage());
            return false;
        }
        new ProjectOpening(workbench.getService(OpenProjects.class), getShell()).open(target);
        return true;
    }
}
