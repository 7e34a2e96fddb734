package org.coursewright.workbench.internal.project;

import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.IShellProvider;
import org.eclipse.ui.actions.ActionFactory;

/** Saves the active project, and says in a dialog why it cannot be saved. */
final class SaveAction extends SessionAction {

    private final IShellProvider shell;

    SaveAction(OpenProjects projects, IShellProvider shell) {
        super(projects, ActionFactory.SAVE);
        this.shell = shell;
        setText(ProjectText.save);
        update();
    }

    @Override
    void update() {
        setEnabled(projects().active().filter(ProjectSession::isDirty).isPresent());
    }

    @Override
    public void run() {
        projects().active().filter(ProjectSession::isDirty).ifPresent(this::save);
    }

    private void save(ProjectSession session) {
        try {
            session.save();
        } catch (ProjectFileException e) {
            MessageDialog.openError(shell.getShell(), ProjectText.cannotSave, e.getMessage());
        }
    }
}
