package org.coursewright.estimate.ui.scenario;

import java.util.Arrays;
import java.util.List;

import org.coursewright.model.edit.ElementLabels;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CheckboxTableViewer;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/**
 * Elements of a project, of which any number can be ticked.
 *
 * @param <E> kind of element
 */
final class CheckedElements<E extends EObject> {

    private static final int LEAST_WIDTH = 240;
    private static final int LEAST_HEIGHT = 150;

    private final CheckboxTableViewer viewer;
    private final Class<E> kind;

    /**
     * @param parent of the list
     * @param kind of the elements
     * @param elements in their order
     * @param name of the list, for those who hear the screen
     * @param ticked run after each change
     */
    CheckedElements(Composite parent, Class<E> kind, List<E> elements, String name, Runnable ticked) {
        this.kind = kind;
        viewer = CheckboxTableViewer.newCheckList(parent, SWT.BORDER);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        viewer.setLabelProvider(LabelProvider.createTextProvider(element -> ElementLabels.of((EObject) element)));
        viewer.setInput(elements);
        viewer.addCheckStateListener(event -> ticked.run());
        AccessibleName.give(viewer.getTable(), name);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(LEAST_WIDTH, LEAST_HEIGHT).applyTo(viewer
                .getTable());
    }

    /** @return what is ticked, in the order of the list */
    List<E> ticked() {
        return Arrays.stream(viewer.getCheckedElements()).map(kind::cast).toList();
    }
}
