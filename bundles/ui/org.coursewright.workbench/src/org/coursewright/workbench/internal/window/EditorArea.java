package org.coursewright.workbench.internal.window;

import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PerspectiveAdapter;

/** Keeps the place of the editors open as long as there is one, whatever is worked on, and gives it to the views else. */
final class EditorArea extends PerspectiveAdapter implements IPartListener2 {

    /** @param window that it is kept in from now on */
    static void keepIn(IWorkbenchWindow window) {
        EditorArea area = new EditorArea();
        window.addPerspectiveListener(area);
        window.getPartService().addPartListener(area);
    }

    @Override
    public void perspectiveActivated(IWorkbenchPage page, IPerspectiveDescriptor perspective) {
        show(page);
    }

    @Override
    public void partClosed(IWorkbenchPartReference part) {
        if (!part.getPage().getWorkbenchWindow().getWorkbench().isClosing()) {
            show(part.getPage());
        }
    }

    /** Shows the place of the editors, or hides it if none is open. */
    static void show(IWorkbenchPage page) {
        page.setEditorAreaVisible(page.getEditorReferences().length > 0);
    }
}
