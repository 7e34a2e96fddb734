package org.coursewright.workbench.saving;

import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.WorkbenchIds;
import org.coursewright.workbench.internal.element.ElementIcons;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.Saveable;

/** A project as the platform's questions about unsaved work see it; equal for every part that shows the project. */
public final class ProjectSaveable extends Saveable {

    private final ProjectSession session;

    /** @param session of the project, open */
    public ProjectSaveable(ProjectSession session) {
        this.session = session;
    }

    @Override
    public String getName() {
        return session.project().getName();
    }

    @Override
    public String getToolTipText() {
        return session.file().toString();
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return ElementIcons.of(session.project());
    }

    @Override
    public void doSave(IProgressMonitor monitor) throws CoreException {
        try {
            session.save();
        } catch (ProjectFileException e) {
            throw new CoreException(new Status(IStatus.ERROR, WorkbenchIds.BUNDLE, e.getMessage(), e));
        }
    }

    @Override
    public boolean isDirty() {
        return session.isDirty();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ProjectSaveable that && that.session == session;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(session);
    }
}
