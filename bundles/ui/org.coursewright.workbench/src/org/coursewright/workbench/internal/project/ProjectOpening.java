package org.coursewright.workbench.internal.project;

import java.nio.file.Path;
import java.util.Optional;

import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectInUseException;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.BusyIndicator;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

/** Opens project files on somebody's behalf, and says in a dialog why one cannot be opened. */
public final class ProjectOpening {

    private final OpenProjects projects;
    private final Shell shell;

    /**
     * @param projects where the project is to be open
     * @param shell over which dialogs appear
     */
    public ProjectOpening(OpenProjects projects, Shell shell) {
        this.projects = projects;
        this.shell = shell;
    }

    /** @return the file somebody chose, empty if they thought better of it */
    public Optional<Path> choose() {
        FileDialog dialog = new FileDialog(shell, SWT.OPEN);
        dialog.setText(ProjectText.chooseFile);
        dialog.setFilterExtensions(new String[]{"*.coursewright", "*"});
        dialog.setFilterNames(new String[]{ProjectText.projectFiles, ProjectText.allFiles});
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    /** @param file project file to be opened, or to be activated if it is open already */
    public void open(Path file) {
        BusyIndicator.showWhile(shell.getDisplay(), () -> openOrExplain(file));
    }

    private void openOrExplain(Path file) {
        try {
            projects.open(file);
        } catch (ProjectInUseException e) {
            MessageDialog.openWarning(shell, ProjectText.inUse, e.getMessage());
        } catch (ProjectFileException e) {
            MessageDialog.openError(shell, ProjectText.cannotOpen, e.getMessage());
        }
    }
}
