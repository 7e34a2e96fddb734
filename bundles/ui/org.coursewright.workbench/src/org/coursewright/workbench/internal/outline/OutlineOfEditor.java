package org.coursewright.workbench.internal.outline;

import org.eclipse.core.runtime.IAdapterFactory;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;

/** Gives every editor that was opened on an element, and brings no outline of its own, the tree of that element's parts. */
public final class OutlineOfEditor implements IAdapterFactory {

    @Override
    public <T> T getAdapter(Object editor, Class<T> adapter) {
        EObject element = ((IEditorPart) editor).getEditorInput().getAdapter(EObject.class);
        return element == null ? null : adapter.cast(new ElementOutline(element));
    }

    @Override
    public Class<?>[] getAdapterList() {
        return new Class<?>[]{IContentOutlinePage.class};
    }
}
