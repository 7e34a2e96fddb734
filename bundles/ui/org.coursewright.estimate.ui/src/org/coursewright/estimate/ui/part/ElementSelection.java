package org.coursewright.estimate.ui.part;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;

/** The element of the project behind whatever is selected in an editor, so that other views can show its properties. */
final class ElementSelection implements ISelectionProvider {

    private final List<ISelectionChangedListener> listeners = new CopyOnWriteArrayList<>();
    private ISelection selection = StructuredSelection.EMPTY;

    @Override
    public ISelection getSelection() {
        return selection;
    }

    @Override
    public void setSelection(ISelection selected) {
        if (!selection.equals(selected)) {
            selection = selected;
            listeners.forEach(listener -> listener.selectionChanged(new SelectionChangedEvent(this, selected)));
        }
    }

    @Override
    public void addSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.add(listener);
    }

    @Override
    public void removeSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.remove(listener);
    }
}
