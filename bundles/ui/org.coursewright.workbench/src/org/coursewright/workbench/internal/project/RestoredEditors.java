package org.coursewright.workbench.internal.project;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Predicate;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjectsListener;
import org.eclipse.core.runtime.ILog;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

/**
 * Looks after editors that were open when the workbench was last closed and that nobody has looked at since: the platform
 * makes them only when their tab is chosen, so they cannot look after themselves.
 *
 * @param page of the window
 */
public record RestoredEditors(IWorkbenchPage page) implements OpenProjectsListener {

    /** Takes away the tabs of elements that cannot be had any more; to be called once the projects are open. */
    public void closeLost() {
        closeUnseen(editor -> elementOf(editor).isEmpty());
    }

    @Override
    public void projectChanged(Change change, ProjectSession session) {
        if (change == Change.CLOSED) {
            closeUnseen(editor -> elementOf(editor).map(EcoreUtil::getRootContainer)
                    .filter(session.project()::equals).isPresent());
        }
    }

    private void closeUnseen(Predicate<IEditorReference> which) {
        IEditorReference[] unseen = Arrays.stream(page.getEditorReferences())
                .filter(editor -> editor.getEditor(false) == null).filter(which).toArray(IEditorReference[]::new);
        page.closeEditors(unseen, false);
    }

    private static Optional<EObject> elementOf(IEditorReference editor) {
        try {
            return Optional.ofNullable(editor.getEditorInput().getAdapter(EObject.class));
        } catch (PartInitException e) {
            ILog.of(RestoredEditors.class).info(e.getMessage()); // the element is gone: nothing that a person must do
            return Optional.empty();
        }
    }
}
