package org.coursewright.workbench.internal.project;

import java.util.Arrays;
import java.util.List;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.saving.ProjectSaveable;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.ISaveablesSource;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;

/** Finds the editors that are open on a project. */
final class ProjectEditors {

    private ProjectEditors() {
    }

    /** @return how many editors, in all windows, hold the project */
    static int on(ProjectSession session) {
        ProjectSaveable project = new ProjectSaveable(session);
        return Math.toIntExact(Arrays.stream(PlatformUI.getWorkbench().getWorkbenchWindows())
                .flatMap(window -> Arrays.stream(window.getPages())).map(IWorkbenchPage::getEditorReferences)
                .flatMap(Arrays::stream).filter(editor -> holds(editor, project)).count());
    }

    private static boolean holds(IEditorReference editor, ProjectSaveable project) {
        return editor.getEditor(false) instanceof ISaveablesSource source
                && List.of(source.getSaveables()).contains(project);
    }
}
