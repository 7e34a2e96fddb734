package org.coursewright.diagram.ui.editor;

import java.util.Optional;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IElementFactory;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.PlatformUI;

/** Finds an element again that an editor was open on when the workbench was last closed, and opens its project first. */
public final class StoredElementFactory implements IElementFactory {

    static final String ID = "org.coursewright.diagram.ui.element";

    /** @return the input of the editor, null if project or element cannot be had any more: the editor then stays away */
    @Override
    public IAdaptable createElement(IMemento memento) {
        return StoredElement.in(memento).flatMap(StoredElementFactory::find).orElse(null);
    }

    private static Optional<ElementInput> find(StoredElement stored) {
        OpenProjects projects = PlatformUI.getWorkbench().getService(OpenProjects.class);
        try {
            projects.open(stored.file());
        } catch (ProjectFileException e) {
            // the workbench opens the same project in a moment and says then, in a dialog, why it cannot be had
            ILog.of(StoredElementFactory.class).info(e.getMessage());
            return Optional.empty();
        }
        return projects.active().flatMap(session -> find(session, stored.id()));
    }

    private static Optional<ElementInput> find(ProjectSession session, String id) {
        return new ElementReference("", Optional.of(id)).in(session.project())
                .map(element -> new ElementInput(session, element));
    }
}
